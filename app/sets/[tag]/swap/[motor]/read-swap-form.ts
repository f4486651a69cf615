import { severalLines } from '@/app/form-text';
import { oneLine } from '@/app/paths';
import { readNumber } from '@/lib/units/read-number';
import type { FormProblem, SwapValues } from './swap-state';

/** The quantities of the form; null where nothing was typed, or nothing that could be read. */
export interface SwapQuantities {
  insulationMohm: number | null;
  overloadA: number | null;
  shimsPresentMm: number | null;
}

/** What was typed and ticked, as it stands. */
export function valuesOf(form: FormData): SwapValues {
  const one = (name: string) => oneLine(textOf(form.get(name)));
  const many = (name: string) => form.getAll(name).map((value) => oneLine(textOf(value)));
  return {
    key: one('key'),
    why: one('why'),
    whyWords: one('whyWords'),
    outTo: one('outTo'),
    shelfId: one('shelfId'),
    workDone: many('workDone'),
    checks: many('checks'),
    insulationMohm: one('insulationMohm'),
    overloadA: one('overloadA'),
    shimsPresentMm: one('shimsPresentMm'),
    note: severalLines(textOf(form.get('note'))).trim(),
    stops: one('stops'),
  };
}

/** Reads the quantities as people write them, with every problem at once. */
export function quantitiesOf(values: SwapValues): { quantities: SwapQuantities; problems: FormProblem[] } {
  const problems: FormProblem[] = [];
  const quantity = (path: keyof SwapQuantities, name: string, max: number): number | null => {
    if (values[path] === '') return null;
    const read = readNumber(values[path], { min: 0, max });
    if (read.ok) return read.value;
    for (const { says } of read.problems) problems.push({ path, says: `${name}: “${values[path]}” ${says}.` });
    return null;
  };
  const quantities = {
    insulationMohm: quantity('insulationMohm', 'Insulation', 1_000_000),
    overloadA: quantity('overloadA', 'Overload setting', 5_000),
    shimsPresentMm: quantity('shimsPresentMm', 'Shims', 100),
  };
  if (quantities.overloadA === 0) problems.push({ path: 'overloadA', says: 'Overload setting: must be above 0 A.' });
  return { quantities, problems };
}

const textOf = (value: FormDataEntryValue | null) => (typeof value === 'string' ? value : '');
