/** What stood there that was not understood, or was understood only after a choice, and why. */
export interface TextProblem {
  path: string;
  value: string | null;
  says: string;
}

/**
 * A figure read from text as people write it. `doubts` tell a choice that was made and its reason: the
 * value holds, but a person should see it.
 */
export type ReadingOfText<T> = { ok: true; value: T; doubts: TextProblem[] } | { ok: false; problems: TextProblem[] };

export const understood = <T>(value: T, doubts: TextProblem[] = []): ReadingOfText<T> => ({ ok: true, value, doubts });

export const notUnderstood = <T>(text: string, says: string): ReadingOfText<T> => ({
  ok: false,
  problems: [textProblem(text, says)],
});

export const textProblem = (text: string, says: string): TextProblem => {
  const shown = text.trim();
  return { path: '(whole)', value: shown.length > 80 ? `${shown.slice(0, 77)}...` : shown, says };
};

/** Reads every part of a list; all its problems at once. */
export function readEach<T>(parts: string[], read: (part: string) => ReadingOfText<T>): ReadingOfText<T[]> {
  const readings = parts.map(read);
  const problems = readings.flatMap((r) => (r.ok ? [] : r.problems));
  if (problems.length > 0) return { ok: false, problems };
  return understood(
    readings.flatMap((r) => (r.ok ? [r.value] : [])),
    readings.flatMap((r) => (r.ok ? r.doubts : [])),
  );
}
