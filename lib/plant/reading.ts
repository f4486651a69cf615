import type { z } from 'zod';
import { rightAt } from './right-at';

/** One thing that was not understood: where, what stood there, and what would be right. */
export interface Problem {
  path: string;
  value: string | null;
  says: string;
}

export type Reading<T> = { ok: true; value: T } | { ok: false; problems: Problem[] };

/**
 * Reads `input` by a schema into a value or into every problem at once, each with its path and value. What is sent
 * decides neither how long an answer gets nor how deep it is looked into: past a thousand the problems are counted.
 */
export function read<T extends z.ZodType>(schema: T, input: unknown): Reading<z.output<T>> {
  const parsed = schema.safeParse(input, { reportInput: true });
  if (parsed.success) return { ok: true, value: parsed.data };
  const problems: Problem[] = [];
  let more = 0;
  for (const issue of parsed.error.issues) {
    const isKeys = issue.code === 'unrecognized_keys';
    const room = MOST_PROBLEMS - problems.length;
    more += Math.max(0, (isKeys ? issue.keys.length : 1) - room);
    if (room <= 0) continue;
    if (isKeys) for (const key of issue.keys.slice(0, room)) problems.push(unknownKey(issue.path, key));
    else problems.push({ path: join(issue.path), value: shown(stoodAt(issue)), says: saysOf(schema, issue) });
  }
  if (more > 0) problems.push({ path: WHOLE, value: null, says: `has ${more} more problems: mend these first` });
  return { ok: false, problems };
}

const WHOLE = '(whole)';
const MOST_PROBLEMS = 1_000;
const LONGEST_SHOWN = 80;

const unknownKey = (path: PropertyKey[], key: string): Problem => ({
  path: join([...path, key]),
  value: null,
  says: 'is not a key known here',
});

/** What would be right. A schema's own words win; else the schema at the path is put into words. */
function saysOf(schema: z.ZodType, issue: z.core.$ZodIssue): string {
  if (issue.code === 'custom') return issue.message;
  if (issue.code === 'invalid_format' && !issue.message.startsWith('Invalid'))
    return issue.message.startsWith('must') ? issue.message : `must be ${issue.message}`;
  const right = rightAt(schema, issue.path);
  return stoodAt(issue) === undefined ? `is missing: must be ${right}` : `must be ${right}`;
}

/** What stood at the path. Where one key decides which of several groups is meant, the issue carries the whole group. */
function stoodAt(issue: z.core.$ZodIssue): unknown {
  const { input } = issue;
  const last = issue.path.at(-1);
  const isWhole = issue.code === 'invalid_union' && issue.discriminator === last && last !== undefined;
  return isWhole && typeof input === 'object' && input !== null ? Reflect.get(input, last) : input;
}

const join = (path: PropertyKey[]) => path.map((key) => shortened(String(key))).join('.') || WHOLE;

/** What stood there. A list or a group is told as such: it may be as deep as it likes. */
function shown(input: unknown): string | null {
  if (input === undefined) return null;
  if (Array.isArray(input)) return `a list of ${input.length}`;
  if (typeof input === 'object' && input !== null) return 'a group of keys';
  return typeof input === 'string' ? shortened(JSON.stringify(input.slice(0, LONGEST_SHOWN))) : String(input);
}

/** Short and one line, whatever was sent. */
function shortened(text: string): string {
  const short = text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN - 3)}...` : text;
  return short.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, ' ');
}
