import type { Context } from '@/lib/matching/context';
import { limitHertz } from '@/lib/matching/speed/limit-hertz';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Quantity } from './quantity';

/** What the drive is told of the motor: its plate, its limits, and the frequency of the duty where it changes. */
export function driveSettings(set: PumpSet, motor: Motor, context: Context): Quantity[] {
  const { drive, start } = set.supply;
  if (start !== 'drive') return [];
  return [plateOf(context), limits(drive, limitHertz(set, motor, context.row)), ...duty(context)];
}

function plateOf({ row: { plate } }: Context): Quantity {
  const about = { id: 'drive-plate', name: 'Plate entered in the drive' } as const;
  if (plate === null) return { ...about, value: null, detail: 'Read the plate’s row for the drive’s output' };
  const told = [
    [plate.volts, 'V'],
    [plate.hertz, 'Hz'],
    [plate.amps, 'A'],
    [plate.rpm, 'rpm'],
    [plate.kw, 'kW'],
  ] as const;
  const known = told.flatMap(([value, unit]) => (value === null ? [] : [`${figure(value)} ${unit}`]));
  const missing = told.flatMap(([value, unit]) => (value === null ? [unit] : []));
  return {
    ...about,
    value: known.length === 0 ? null : known.join(', '),
    detail: missing.length === 0 ? null : `read on the plate: ${missing.join(', ')}`,
  };
}

function limits(drive: PumpSet['supply']['drive'], lowerToHertz: number | null): Quantity {
  const about = { id: 'drive-limits', name: 'Drive, lowest and highest' } as const;
  const { minHertz = null, maxHertz = null } = drive ?? {};
  const highest = lowerToHertz ?? maxHertz;
  const ends = [minHertz, highest].map((end) => (end === null ? '?' : figure(end, 1)));
  const lowered = lowerToHertz === null || maxHertz === null ? null : `lowered from ${figure(maxHertz, 1)} Hz`;
  if (minHertz === null && highest === null) return { ...about, value: null, detail: 'Read both limits in the drive' };
  const missing = ends.includes('?') ? 'read the other limit in the drive' : null;
  return { ...about, value: `${ends.join(' to ')} Hz`, detail: lowered ?? missing };
}

/** The frequency that brings the pump back to its speed, where the speed finding asks for one. */
function duty({ point }: Context): Quantity[] {
  const hertz = point.restored?.hertz ?? null;
  if (hertz === null) return [];
  const before = point.hertz === null ? null : `in place of ${figure(point.hertz, 1)} Hz`;
  return [{ id: 'drive-duty', name: 'Drive set to, for the duty', value: `${figure(hertz, 1)} Hz`, detail: before }];
}
