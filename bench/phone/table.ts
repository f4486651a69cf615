import os from 'node:os';

const missed: string[] = [];

/** A line of the table; `most` is the target, in the figure's unit; null: none was set. */
export function tell(what: string, figure: number, unit: 's' | 'ms' | 'kB' | '', most: number | null, note = '') {
  const isMissed = most !== null && figure > most;
  if (isMissed) missed.push(what);
  const digits = unit === 's' || unit === 'kB' ? 1 : unit === 'ms' ? 0 : 4;
  const target = most === null ? '' : `${isMissed ? 'MISSED' : 'holds'}, at most ${most} ${unit}`;
  const load = os.loadavg()[0]?.toFixed(1);
  console.log(
    `${what.padEnd(62)} ${`${figure.toFixed(digits)} ${unit}`.padStart(11)}   ${target.padEnd(24)} load ${load}   ${note}`,
  );
}

export const missedTargets = (): readonly string[] => missed;
