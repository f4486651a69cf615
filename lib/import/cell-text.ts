import { classification } from '@/lib/plant/classification';
import { read } from '@/lib/plant/reading';
import { areaInWords } from '@/lib/standards/area-order';
import { plainDecimal } from './cells/cell';
import { quoted, spoiltBy } from './cells/text-cell';
import type { Field } from './field';
import { isNotKnown } from './not-known';
import { TOTAL } from './skip-row';

/** A value of a field as an export writes it and as its reader reads it again; null: not known. */
export function cellOf({ shape, id }: Field, value: unknown): string | number | null {
  if (value === undefined || (value === null && shape.as !== 'classification')) return null;
  switch (shape.as) {
    case 'yes-no':
      return value === true ? 'yes' : 'no';
    case 'auxiliaries':
      return (value as string[]).length === 0 ? 'none' : (value as string[]).join(', ');
    case 'rotation':
      return value === 'either' ? 'either' : `${String(value).toUpperCase()} from drive end`;
    case 'classification':
      if (value === null) return shape.mayBeUnclassified ? 'unclassified' : null;
      return areaText(value);
    case 'text':
    case 'name':
    case 'plate':
      // A lone dash is a service at nobody's plant, but a name may be "NA": between quotes it is not taken for "not known".
      return quoted(String(value), (text) => isMisread(text, id));
    default:
      return typeof value === 'number' ? value : String(value);
  }
}

/** As the schema has it: in what is kept, what is not known is left out. */
function areaText(value: unknown): string | null {
  const told = read(classification, value);
  if (!told.ok) return null;
  const [, before, degrees] = /^(.*), (\d[\d.]*(?:e-?\d+)?) °C$/.exec(areaInWords(told.value)) ?? [];
  return degrees === undefined ? areaInWords(told.value) : `${before}, ${plainDecimal(Number(degrees))} °C`;
}

const isMisread = (text: string, id: string): boolean =>
  isNotKnown(text) ||
  /^'|^#/.test(text) ||
  TOTAL.test(text) ||
  (NAMES.has(id) && spoiltBy({ text, type: null, unit: null, decimal: null }) !== null);
const NAMES = new Set(['tag', 'plantNumber', 'serial', 'pumpSerial']);

/** The same for a person, as a change from it or to it. */
export function shownOf(field: Field, value: unknown): string | null {
  const cell = cellOf(field, value);
  if (cell === null) return null;
  return field.unit === null ? String(cell) : `${cell} ${field.unit}`;
}
