/** What a field may hold; a list is one value ("has", "needs", the groups of a classification). */
export type Leaf = string | number | boolean | readonly string[];

/**
 * A record as its fields by path, in the contract's words: "supply.volts", "ratings.0.rpm". What is not known is not
 * there. The audit, an undo and a record as it stood on a date are all told in these paths.
 */
export type State = Readonly<Record<string, Leaf>>;

/** Fields to be given another value; null: not known any more. */
export type Edit = Readonly<Record<string, Leaf | null>>;

/** "Unclassified, said by a person": the one null that is a value. */
const UNCLASSIFIED = 'none';
const CLASSIFICATION = 'surroundings.classification';

/** An object's told fields by path. */
export function stateOf(object: object, under = ''): State {
  const fields: [string, Leaf][] = [];
  for (const [key, value] of Object.entries(object)) {
    const path = under === '' ? key : `${under}.${key}`;
    if (value === null && path === CLASSIFICATION) fields.push([path, UNCLASSIFIED]);
    else if (value === null || value === undefined) continue;
    else if (value instanceof Date) fields.push([path, value.toISOString()]);
    else if (Array.isArray(value) && !value.some((one) => typeof one === 'object')) fields.push([path, value]);
    else if (typeof value === 'object') fields.push(...Object.entries(stateOf(value, path)));
    else fields.push([path, value]);
  }
  return Object.fromEntries(fields);
}

/** The object that `stateOf` would tell so. Rows of a list that tell nothing are left out. */
export function objectOf(state: State): Record<string, unknown> {
  const whole: Record<string, unknown> = {};
  for (const [path, value] of Object.entries(state)) {
    const keys = path.split('.');
    const last = keys.pop() as string;
    let at = whole;
    for (const key of keys) {
      const inner = Object.hasOwn(at, key) ? at[key] : undefined;
      if (typeof inner === 'object' && inner !== null) at = inner as Record<string, unknown>;
      else {
        const made: Record<string, unknown> = {};
        Object.defineProperty(at, key, { value: made, enumerable: true, writable: true, configurable: true });
        at = made;
      }
    }
    const told = path === CLASSIFICATION && value === UNCLASSIFIED ? null : value;
    Object.defineProperty(at, last, { value: told, enumerable: true, writable: true, configurable: true });
  }
  if (Object.hasOwn(whole, 'ratings')) whole.ratings = rowsOf(whole.ratings as Record<string, unknown>);
  return whole;
}

const rowsOf = (rows: Record<string, unknown>) =>
  Object.entries(rows)
    .sort(([a], [b]) => Number(a) - Number(b))
    .map(([, row]) => row);

/** The state with the edit made. */
export function edited(state: State, edit: Edit): State {
  const fields = { ...state, ...edit };
  return Object.fromEntries(Object.entries(fields).filter((field): field is [string, Leaf] => field[1] !== null));
}

/** What differs, from what to what; null when nothing does. */
export function difference(
  from: State,
  to: State,
): { before: Record<string, Leaf | null>; after: Record<string, Leaf | null> } | null {
  const paths = [...new Set([...Object.keys(from), ...Object.keys(to)])].filter(
    (path) => !isSame(at(from, path), at(to, path)),
  );
  if (paths.length === 0) return null;
  return {
    before: Object.fromEntries(paths.map((path) => [path, at(from, path)])),
    after: Object.fromEntries(paths.map((path) => [path, at(to, path)])),
  };
}

/** The value at a path; null: not known. */
export const at = (state: Edit, path: string): Leaf | null =>
  Object.hasOwn(state, path) ? (state[path] ?? null) : null;

export const isSame = (a: Leaf | null, b: Leaf | null): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Whether anything that came from outside can be the value of a field. */
export const isLeaf = (value: unknown): value is Leaf =>
  typeof value === 'string' ||
  typeof value === 'boolean' ||
  (typeof value === 'number' && Number.isFinite(value)) ||
  (Array.isArray(value) && value.every((one) => typeof one === 'string'));
