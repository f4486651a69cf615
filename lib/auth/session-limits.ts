/** However busy, a session ends after this many days. */
export const SESSION_DAYS = inRange('BEDPLATE_SESSION_DAYS', 7, 1, 90);
/** Unused for this many hours, it ends too. */
export const IDLE_HOURS = inRange('BEDPLATE_IDLE_HOURS', 12, 1, 24 * 90);

function inRange(name: string, usual: number, least: number, most: number): number {
  const told = process.env[name];
  if (told === undefined) return usual;
  const value = Number(told);
  if (!(value >= least && value <= most)) throw new Error(`${name} must be a number from ${least} to ${most}.`);
  return value;
}
