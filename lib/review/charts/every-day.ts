/** Every day from the first to the last of these (YYYY-MM-DD, oldest first), with what is kept of it; null: nothing is. */
export function everyDay<T extends { day: string }>(kept: readonly T[]): { day: string; of: T | null }[] {
  const [first, last] = [kept[0], kept.at(-1)];
  if (first === undefined || last === undefined) return [];
  const ofDay = new Map(kept.map((one) => [one.day, one]));
  const days: { day: string; of: T | null }[] = [];
  for (let { day } = first; day <= last.day; day = dayAfter(day)) days.push({ day, of: ofDay.get(day) ?? null });
  return days;
}

const DAY_MS = 86_400_000;

/** The day after one, both YYYY-MM-DD. */
export const dayAfter = (day: string): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + DAY_MS).toISOString().slice(0, 10);
