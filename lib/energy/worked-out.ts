/**
 * A figure with what it rests on, in the unit its key names; or null and why it is not known. Nothing stands for a
 * figure that nobody told.
 */
export type WorkedOut = { value: number; from: string } | { value: null; why: string };

export const known = (value: number, from: string): WorkedOut => ({ value, from });
export const unknown = (why: string): WorkedOut => ({ value: null, why });

/** Worked out of others: the first that is not known says why this is not. */
export function workedOut<T extends Readonly<Record<string, WorkedOut>>>(
  parts: T,
  of: (values: { [K in keyof T]: number }) => number,
  from: string,
): WorkedOut {
  const values: Record<string, number> = {};
  for (const [key, part] of Object.entries(parts)) {
    if (part.value === null) return part;
    values[key] = part.value;
  }
  const value = of(values as { [K in keyof T]: number });
  return Number.isFinite(value) ? known(value, from) : unknown('The figures it rests on give none.');
}

/** A figure that somebody told, or why it is missed. */
export const toldOr = (value: number | null, from: string, why: string): WorkedOut =>
  value === null ? unknown(why) : known(value, from);
