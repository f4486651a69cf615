import { figure } from '@/lib/units/figure';
import type { ReviewCase } from '../review-case';
import type { Change } from './cure';
import { lowerFirst } from './lower-first';

type Drive = NonNullable<ReviewCase['set']['supply']['drive']>;
interface Part {
  what: string;
  hours: number;
  differs: Partial<Drive>;
}

/** A filter against the peaks, limits that the motor is made for; each alone, then all of them. */
export function suitingDrive({ set, motor, context, by }: ReviewCase): Change[] {
  const { drive } = set.supply;
  if (set.supply.start !== 'drive' || drive === null) return [];
  const { hours } = by.settings;
  const base = context.row.hertz;
  const parts: Part[] = [];
  const highest = highestHertz(base, motor.maxRpm, context.row.synchronousRpm);
  if (drive.maxHertz !== null && highest !== null && drive.maxHertz > highest)
    parts.push({
      what: `Lower the drive’s upper limit from ${figure(drive.maxHertz, 1)} Hz to ${figure(highest, 1)} Hz`,
      hours: hours['drive-settings'],
      differs: { maxHertz: highest },
    });
  const lowest = base === null ? null : Math.ceil((10 * base) / (motor.constantTorqueRange ?? 1)) / 10;
  if (drive.minHertz !== null && lowest !== null && drive.minHertz < lowest && motor.constantTorqueRange !== null)
    parts.push({
      what: `Raise the drive’s lower limit from ${figure(drive.minHertz, 1)} Hz to ${figure(lowest, 1)} Hz`,
      hours: hours['drive-settings'],
      differs: { minHertz: lowest },
    });
  if (drive.filter !== true)
    parts.push({
      what: 'Fit a filter at the drive’s output that takes its voltage peaks',
      hours: hours['drive-filter'],
      differs: { filter: true },
    });
  const change = (of: readonly Part[]): Change => ({
    what: of.map(({ what }, i) => (i === 0 ? what : lowerFirst(what))).join('; '),
    hours: of.reduce((sum, one) => sum + one.hours, 0),
    set: {
      ...set,
      supply: { ...set.supply, drive: Object.assign({ ...drive }, ...of.map(({ differs }) => differs)) },
    },
  });
  return [...parts.map((one) => change([one])), ...(parts.length > 1 ? [change(parts)] : [])];
}

/** What its maker lets it turn at, else base frequency; rounded down to a tenth. */
function highestHertz(base: number | null, maxRpm: number | null, synchronousRpm: number | null): number | null {
  if (base === null) return null;
  if (maxRpm === null || synchronousRpm === null) return base;
  return Math.floor((10 * base * maxRpm) / synchronousRpm) / 10;
}
