import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { UNTOLD_MOTOR } from '@/lib/plant/untold';

/** What a place asks of any motor, whatever its power, its poles and its frame. Null: nothing tells it. */
export type Needs = Pick<Motor, (typeof NEEDED)[number]>;

const NEEDED = [
  'winding',
  'enclosure',
  'ip',
  'insulation',
  'ambientC',
  'duty',
  'driveDuty',
  'constantTorqueRange',
  'terminalBox',
  'rotation',
  'washdown',
  'classification',
  'has',
  'brake',
  'massKg',
  'lengthMm',
] as const;

const USUAL_AMBIENT_C = 40;
/** Where neither the place nor the failed motor tells one: common practice, no source. */
export const USUAL_IP = 'IP55';

/**
 * The demands that a place makes: what the set states, else what the failed motor had, else what is usual. Limits of length
 * and mass are the figures that a motor as asked may reach.
 */
export function needsAskedFor(set: PumpSet): Needs {
  const { failed, surroundings, supply, base } = set;
  const isDriveFed = supply.start === 'drive';
  return {
    winding: windingOf(set),
    enclosure: 'TEFC',
    ip: surroundings.ip ?? failed?.ip ?? USUAL_IP,
    insulation: 'F',
    ambientC: Math.max(USUAL_AMBIENT_C, surroundings.ambientC ?? USUAL_AMBIENT_C),
    duty: 'S1',
    driveDuty: isDriveFed ? 'inverter' : (failed?.driveDuty ?? null),
    constantTorqueRange: isDriveFed ? rangeOf(set) : null,
    terminalBox: base.cableEntry ?? failed?.terminalBox ?? null,
    rotation: 'either',
    washdown: washdownOf(set),
    classification: surroundings.classification ?? failed?.classification ?? null,
    has: [...new Set([...set.needs, ...(failed?.has ?? [])])],
    brake: failed?.brake ?? UNTOLD_MOTOR.brake,
    massKg: base.maxMassKg,
    lengthMm: base.maxLengthMm,
  };
}

function windingOf({ supply }: PumpSet): Motor['winding'] {
  if (supply.start === 'star-delta') return 'star-delta-6';
  return supply.start === 'part-winding' ? 'part-winding-6' : null;
}

function washdownOf({ surroundings, failed }: PumpSet): Motor['washdown'] {
  const had = failed?.washdown ?? null;
  if (had === 'stainless') return had;
  return surroundings.washdown === true ? 'painted' : had;
}

/** Whole multiples of speed from the drive's least frequency to its base. */
function rangeOf({ supply }: PumpSet): number | null {
  const base = supply.drive?.baseHertz ?? supply.hertz;
  const least = supply.drive?.minHertz ?? null;
  return base === null || least === null ? null : Math.max(1, Math.ceil(base / least));
}
