import type { Field, Units } from '@/lib/fields/field';
import type { FormProblem } from '@/lib/fields/read-form';
import type { Edit } from '@/lib/fields/state';
import type { Query } from './asked-for';

/** Typed into a field of many records: they tell it no more. An empty field leaves each as it is. */
export const NOT_KNOWN = '?';

/** What of many records is to be changed, as the address tells it. */
export function bulkEdit(
  fields: readonly Field[],
  query: Query,
  units: Units,
): { edit: Edit; problems: FormProblem[] } {
  let edit: Edit = {};
  const problems: FormProblem[] = [];
  for (const field of fields) {
    const told = query[field.path];
    const text = (Array.isArray(told) ? told.join(',') : (told ?? '')).trim().slice(0, 400);
    if (text === '') continue;
    if (text === NOT_KNOWN) {
      edit = { ...edit, [field.path]: null };
      continue;
    }
    const read = field.read(text, units);
    if (read.ok) edit = { ...edit, ...read.edit };
    else problems.push({ path: field.path, says: `${field.label}: “${text}” ${read.says}.` });
  }
  return { edit, problems };
}

/** The ids that were ticked; null: none were named, so all that the filter lets through. */
export function idsAsked(query: Query): string[] | null {
  const told = query.id;
  if (told === undefined) return null;
  return (Array.isArray(told) ? told : [told]).slice(0, 2_000);
}
