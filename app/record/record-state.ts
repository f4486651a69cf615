import type { FormProblem, Typed } from '@/lib/fields/read-form';

/** What a record's form shows: what was typed, against which version, and what came of sending it. */
export type RecordState = {
  typed: Typed;
  version: number | null;
  /** What the fields showed when the form was made: what was not touched since is not the person's word. */
  base: Typed;
} & (
  | { outcome: 'asked' | 'read' | 'same' | 'away' | 'signed-out' }
  | { outcome: 'refused'; problems: readonly FormProblem[] }
  /** Somebody saved in between; `now` is what stands. */
  | { outcome: 'stale'; now: Typed }
);

export const asked = (typed: Typed, version: number | null): RecordState => ({
  outcome: 'asked',
  typed,
  version,
  base: typed,
});

/**
 * What the fields hold after somebody else saved: theirs where this person touched nothing, this person's where they
 * did. Both are shown where both touched it.
 */
export function withTheirs(typed: Typed, base: Typed, now: Typed): Typed {
  const names = new Set([...Object.keys(typed), ...Object.keys(now)]);
  const own = [...names].map((name) => [
    name,
    (typed[name] ?? '') === (base[name] ?? '') ? (now[name] ?? '') : (typed[name] ?? ''),
  ]);
  return Object.fromEntries(own);
}
