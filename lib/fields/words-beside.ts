import type { Leaf } from './state';

/** What the audit tells beside the fields of a form: what is kept by id, how many, since when. */
const LABELS: Readonly<Record<string, string>> = {
  areaId: 'Area',
  storeId: 'Store',
  shelfId: 'Shelf',
  setId: 'In the set',
  motorId: 'Motor',
  ownerId: 'Of',
  motorInId: 'Motor in',
  motorOutId: 'Motor out',
  fromSetId: 'Taken from',
  'outTo.place': 'Motor out went',
  'outTo.shelfId': 'To the shelf',
  insulationMohm: 'Insulation, MΩ',
  overloadA: 'Overload set to, A',
  shimsPresentMm: 'Shims under the feet, mm',
  doneAt: 'Done, by the phone’s clock',
  place: 'Where it is',
  retiredAt: 'Retired',
  verdict: 'Judged',
  says: 'What is wrong',
  rule: 'About',
  email: 'E-mail',
  fileName: 'File',
  kind: 'Rows are',
  bytes: 'Size in bytes',
  scopes: 'May',
  expiresAt: 'Until',
  shimLimitMm: 'Shims, where the set states no limit, mm',
  hoursPerYear: 'Hours run in a year',
  pricePerKwh: 'Price of a kWh',
};

const PLACE_WORDS: Readonly<Record<string, string>> = {
  'in-set': 'in a set',
  'on-shelf': 'on a shelf',
  'at-repair': 'at repair',
  'on-order': 'on order',
  scrapped: 'scrapped',
};

/** Of these the value is a word of the program’s, which a person writes with spaces. */
const WORDS: readonly string[] = ['verdict', 'rule', 'kind', 'role', 'scopes', 'units'];
const DAYS: readonly string[] = ['retiredAt', 'expiresAt'];

/** What points to a record without a name, such as a fault, and a sum of a picture’s bytes tell a reader nothing. */
export const isHidden = (path: string): boolean =>
  (path.endsWith('Id') && LABELS[path] === undefined) || path === 'sha256';

/** What a field beside the forms’ is called. One that has no words of its own is spelled as a person would. */
export function labelBeside(path: string): string {
  const known = LABELS[path];
  if (known !== undefined) return known;
  const words = spelled(path.replace(/^hours\./, 'hours for ').replaceAll('.', ', '));
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** Its value; null: not known. */
export function textBeside(
  path: string,
  value: Leaf | null,
  nameOf: (path: string, id: string) => string | null,
): string | null {
  if (value === null) return null;
  const text = Array.isArray(value) ? value.join(', ') : String(value);
  if (path.endsWith('Id')) return nameOf(path, text) ?? 'another';
  if (path === 'place' || path === 'outTo.place') return PLACE_WORDS[text] ?? text;
  if (DAYS.includes(path)) return text.slice(0, 10);
  return WORDS.includes(path) ? spelled(text) : text;
}

/** What stands where a value was: no shelf and no retirement is nothing unknown. Null: it is not known. */
export const endOf = (path: string): string | null =>
  path === 'retiredAt' ? 'no more' : path.endsWith('Id') ? 'none' : null;

/** "slot-or-redrill" and "sessionsEnded" as words. */
const spelled = (text: string) =>
  text.replaceAll(/[-_]/g, ' ').replaceAll(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
