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
      format?: string;
      checks?: { _zod: { def: Check } }[];
    };
  };
}
interface Check {
  check: string;
  value?: number;
  inclusive?: boolean;
  minimum?: number;
  maximum?: number;
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
  return { _zod: { def: { type: 'union', options: alike } } };
}

function inWords(schema: Schema): string {
  const { def } = schema._zod;
  const checks = (def.checks ?? []).map(({ _zod }) => _zod.def);
  switch (def.type) {
    case 'number':
      return numberInWords(checks);
    case 'string':
      return def.format === 'date' ? 'a day such as 2026-11-25' : `text${lengthInWords(checks, 'characters')}`;
    case 'boolean':
      return 'true or false';
    case 'enum':
      return either(Object.values(def.entries ?? {}));
    case 'literal':
      return either((def.values ?? []).map(String));
    case 'array':
      return `a list${lengthInWords(checks, 'items')}`;
    case 'object':
    case 'record':
      return 'a group of keys in braces';
    case 'union':
      return either((def.options ?? []).map((option) => inWords(bare(option))));
    default:
      return 'something else';
  }
}

function numberInWords(checks: readonly Check[]): string {
  const bounds = checks.flatMap(({ check, value, inclusive }) => {
    if (check === 'greater_than') return [inclusive === true ? `of at least ${value}` : `above ${value}`];
    if (check === 'less_than') return [inclusive === true ? `at most ${value}` : `below ${value}`];
    return check === 'multiple_of' ? [`a multiple of ${value}`] : [];
  });
  const what = checks.some(({ format }) => format === 'safeint') ? 'a whole number' : 'a number';
  return bounds.length === 0 ? what : `${what} ${bounds.join(' and ')}`;
}

function lengthInWords(checks: readonly Check[], what: string): string {
  const bounds = checks.flatMap(({ check, minimum, maximum }) => {
    if (check === 'min_length' && minimum !== 0) return [`at least ${minimum}`];
    return check === 'max_length' ? [`at most ${maximum}`] : [];
  });
  return bounds.length === 0 ? '' : ` of ${bounds.join(' and ')} ${what}`;
}

function either(words: readonly string[]): string {
  const distinct = [...new Set(words)];
  if (distinct.length < 2) return distinct.join('');
  return `one of ${distinct.slice(0, -1).join(', ')} or ${distinct.at(-1)}`;
}
