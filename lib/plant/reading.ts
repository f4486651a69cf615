import type { z } from 'zod';

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
  return { ok: false, problems: parsed.error.issues.flatMap(problemsOf) };
}

function problemsOf(issue: z.core.$ZodIssue): Problem[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: join([...issue.path, key]),
      value: null,
      says: 'is not a key known here',
    }));
  return [{ path: join(issue.path), value: shown(issue.input), says: issue.message }];
}

const join = (path: PropertyKey[]) => path.map(String).join('.') || '(whole)';

function shown(input: unknown): string | null {
  if (input === undefined || input === null) return null;
  const text = typeof input === 'object' ? JSON.stringify(input) : String(input);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
