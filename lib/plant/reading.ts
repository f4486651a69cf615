import type { z } from 'zod';
import { rightAt } from './right-at';

/** One thing that was not understood: where, what stood there, and what would be right. */
export interface Problem {
  path: string;
  value: string | null;
  says: string;
}

export type Reading<T> = { ok: true; value: T } | { ok: false; problems: Problem[] };

/** Reads `input` by a schema into a value or into every problem at once, each with its path and value. */
export function read<T extends z.ZodType>(schema: T, input: unknown): Reading<z.output<T>> {
  const parsed = schema.safeParse(input, { reportInput: true });
  if (parsed.success) return { ok: true, value: parsed.data };
  return { ok: false, problems: parsed.error.issues.flatMap((issue) => problemsOf(schema, issue)) };
}

/** As `read`, from text that should be one JSON value. */
export function readJson<T extends z.ZodType>(schema: T, text: string): Reading<z.output<T>> {
  const bare = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  if (bare.trim() === '')
    return { ok: false, problems: [{ path: WHOLE, value: null, says: 'is empty: must be JSON' }] };
  let input: unknown;
  try {
    input = JSON.parse(bare);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, problems: [{ path: WHOLE, value: null, says: `is not JSON: ${reason}` }] };
  }
  return read(schema, input);
}

const WHOLE = '(whole)';
const BYTE_ORDER_MARK = '\uFEFF';

function problemsOf(schema: z.ZodType, issue: z.core.$ZodIssue): Problem[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: join([...issue.path, key]),
      value: null,
      says: 'is not a key known here',
    }));
  return [{ path: join(issue.path), value: shown(issue.input), says: saysOf(schema, issue) }];
}

/** What would be right. A schema's own words win; else the schema at the path is put into words. */
function saysOf(schema: z.ZodType, issue: z.core.$ZodIssue): string {
  if (issue.code === 'custom') return issue.message;
  if (issue.code === 'invalid_format' && !issue.message.startsWith('Invalid'))
    return issue.message.startsWith('must') ? issue.message : `must be ${issue.message}`;
  const right = rightAt(schema, issue.path);
  return issue.input === undefined ? `is missing: must be ${right}` : `must be ${right}`;
}

const join = (path: PropertyKey[]) => path.map(String).join('.') || WHOLE;

function shown(input: unknown): string | null {
  if (input === undefined) return null;
  const text = typeof input === 'object' || typeof input === 'string' ? JSON.stringify(input) : String(input);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
