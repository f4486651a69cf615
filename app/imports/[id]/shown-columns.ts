import type { ImportKind } from '@/lib/import/field';
import { fieldsOf, headingOf } from '@/lib/import/fields';
import { unitsOf } from '@/lib/import/units-of';
import type { RunColumns } from '@/lib/register/import/run';
import type { ShownColumn } from './columns-form';

const BECAUSE = { remembered: 'as before', name: 'by its name', content: 'by what stands in it' } as const;

/** The columns as a person confirms them. */
export const shownColumns = ({ columns }: RunColumns): ShownColumn[] =>
  columns.map(({ index, heading, examples, field, unit, because }) => ({
    ...{ index, heading, examples, letter: letterOf(index) },
    ...{ field: field ?? '', unit: unit ?? '', because: because === null ? '' : BECAUSE[because] },
  }));

export const fieldChoices = (kind: ImportKind): { value: string; words: string }[] =>
  fieldsOf(kind).map((field) => ({ value: field.id, words: headingOf(field) }));

/** By field: the units that its figures can be in. */
export const unitChoices = (kind: ImportKind): Record<string, string[]> =>
  Object.fromEntries(fieldsOf(kind).map((field) => [field.id, [...unitsOf(field)]]));

/** A, B ... Z, AA ... as spreadsheets call their columns. */
const letterOf = (index: number): string =>
  (index < 26 ? '' : letterOf(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));
