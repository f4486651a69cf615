import type { z } from 'zod';

/** What a schema takes at a path, in words that end "must be ...": "a number above 0 and at most 15000". */
export function rightAt(schema: z.ZodType, path: readonly PropertyKey[]): string {
  let at: Schema | undefined = bare(schema as unknown as Schema);
  for (const key of path) at = at && inside(at, key);
  return at === undefined ? 'something else' : inWords(at);
}

/** The parts of zod's definitions that are read here. */
interface Schema {
  _zod: {
    def: {
      type: string;
      in?: Schema;
      innerType?: Schema;
      element?: Schema;
      valueType?: Schema;
      shape?: Record<string, Schema>;
      options?: Schema[];
      entries?: Record<string, string>;
      values?: unknown[];
    };
    bag: Bag;
  };
}
interface Bag {
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  exclusiveMaximum?: number;
  multipleOf?: number;
  format?: string;
}

/** The schema under "may be untold" and transformations. */
function bare(schema: Schema): Schema {
  const under = schema._zod.def.innerType ?? schema._zod.def.in;
  return under === undefined ? schema : bare(under);
}

function inside(schema: Schema, key: PropertyKey): Schema | undefined {
  const { shape, element, valueType, options } = schema._zod.def;
  const next = shape?.[String(key)] ?? element ?? valueType;
  if (next !== undefined) return bare(next);
  const alike = (options ?? []).map((option) => inside(bare(option), key)).filter((found) => found !== undefined);
  if (alike.length < 2) return alike[0];
  // One key in several shapes (a scheme): every one of them is right.
  return { _zod: { def: { type: 'union', options: alike }, bag: {} } };
}

function inWords(schema: Schema): string {
  const { def, bag } = schema._zod;
  switch (def.type) {
    case 'number':
      return numberInWords(bag);
    case 'string':
      return bag.format === 'date' ? 'a day such as 2026-11-25' : `text${lengthInWords(bag, 'characters')}`;
    case 'boolean':
      return 'true or false';
    case 'enum':
      return either(Object.values(def.entries ?? {}));
    case 'literal':
      return either((def.values ?? []).map(String));
    case 'array':
      return `a list${lengthInWords(bag, 'items')}`;
    case 'object':
    case 'record':
      return 'a group of keys in braces';
    case 'union':
      return either((def.options ?? []).map((option) => inWords(bare(option))));
    default:
      return 'something else';
  }
}

function numberInWords({ minimum, maximum, exclusiveMinimum, exclusiveMaximum, multipleOf, format }: Bag): string {
  const what = format === 'safeint' ? 'a whole number' : 'a number';
  const bounds = [
    exclusiveMinimum === undefined || (minimum !== undefined && minimum > exclusiveMinimum)
      ? from(minimum)
      : `above ${exclusiveMinimum}`,
    exclusiveMaximum === undefined || (maximum !== undefined && maximum < exclusiveMaximum)
      ? upTo(maximum)
      : `below ${exclusiveMaximum}`,
    multipleOf === undefined ? null : `a multiple of ${multipleOf}`,
  ].filter((bound) => bound !== null);
  return bounds.length === 0 ? what : `${what} ${bounds.join(' and ')}`;
}

const from = (minimum: number | undefined) =>
  minimum === undefined || minimum <= Number.MIN_SAFE_INTEGER ? null : `of at least ${minimum}`;
const upTo = (maximum: number | undefined) =>
  maximum === undefined || maximum >= Number.MAX_SAFE_INTEGER ? null : `at most ${maximum}`;

function lengthInWords({ minimum, maximum }: Bag, what: string): string {
  const least = minimum === undefined || minimum === 0 ? '' : ` of at least ${minimum}`;
  const most = maximum === undefined ? '' : `${least === '' ? ' of' : ' and'} at most ${maximum}`;
  return least === '' && most === '' ? '' : `${least}${most} ${what}`;
}

function either(words: readonly string[]): string {
  const distinct = [...new Set(words)];
  if (distinct.length < 2) return distinct.join('');
  return `one of ${distinct.slice(0, -1).join(', ')} or ${distinct.at(-1)}`;
}
