import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import type { RatingRow } from '../context/rating-row';
import { block, type Compared, type Finding, note, toJudge, toRead } from '../finding';
import { joined } from '../joined';

type Drive = NonNullable<PumpSet['supply']['drive']>;

/** Do the drive's lowest and highest frequencies suit the motor? Null: they do. */
export function speedsOnDrive(
  set: PumpSet,
  drive: Drive,
  candidate: Motor,
  { row }: Context,
  isSamePlate: boolean,
  compared: Compared,
): Finding | null {
  // The same plate ran here up to the same speed.
  const isAsBefore = isSamePlate && set.failed?.maxRpm === candidate.maxRpm;
  const base = row.hertz;
  return joined(
    lowest(set, drive.minHertz, base, candidate, compared),
    highest(drive.maxHertz, base, candidate, row, isAsBefore, compared),
  );
}

const RANGE_CITE = 'constant-torque range as declared; conventions from memory';
const DUST = 1e-9;

function lowest(
  set: PumpSet,
  minHertz: number | null,
  base: number | null,
  candidate: Motor,
  compared: Compared,
): Finding | null {
  // A quadratic load asks little torque at low speed, and its heat falls with it.
  if (set.load.kind === 'quadratic') return null;
  const have = candidate.constantTorqueRange;
  if (minHertz !== null && base !== null) {
    const asked = base / minHertz;
    if (asked <= 1 + DUST || (have !== null && asked <= have + DUST)) return null;
  }
  const about = { ...compared, cite: RANGE_CITE };
  if (minHertz === null)
    return note(
      about,
      'The lowest frequency of the drive is not stated: keep it inside the motor’s constant-torque range.',
    );
  if (base === null)
    return toRead(
      about,
      'Base frequency of the drive unknown, and so the speed range.',
      'Read the base frequency set in the drive',
      5,
    );
  const need = base / minHertz;
  const compare = { ...about, have, need: Math.round(need * 100) / 100, unit: ':1' };
  if (have === null)
    return toRead(
      compare,
      `Constant-torque range unknown; the set asks ${figure(need, 1)}:1.`,
      'Read the constant-torque speed range on the plate or in the maker’s sheet',
      10,
    );
  return toJudge(
    compare,
    `Constant torque over ${figure(have, 1)}:1; the set asks ${figure(need, 1)}:1, where its own fan cools too little.`,
  );
}

function highest(
  maxHertz: number | null,
  base: number | null,
  candidate: Motor,
  row: RatingRow,
  isAsBefore: boolean,
  compared: Compared,
): Finding | null {
  if (maxHertz === null || base === null || row.synchronousRpm === null) return null;
  const rpm = (row.synchronousRpm * maxHertz) / base;
  const { maxRpm } = candidate;
  const suits =
    maxRpm === null ? maxHertz <= base + DUST || isAsBefore || isPlatedFor(candidate, maxHertz) : rpm <= maxRpm + DUST;
  if (suits) return null;
  const compare = { ...compared, have: maxRpm, need: Math.round(rpm), unit: 'rpm', cite: 'highest speed as declared' };
  if (maxRpm !== null)
    return block(
      compare,
      `At ${figure(maxHertz, 1)} Hz it would turn at ${figure(rpm, 0)} rpm; it may turn at ${figure(maxRpm, 0)}.`,
    );
  return toRead(
    compare,
    `The drive goes to ${figure(maxHertz, 1)} Hz, ${figure(rpm, 0)} rpm; how fast the motor may turn is unknown.`,
    'Read the highest safe speed on the plate or in the maker’s sheet',
    10,
  );
}

/** A plate row at that frequency or above: it is made to turn so fast. */
function isPlatedFor({ ratings }: Motor, hertz: number): boolean {
  for (const row of ratings) if (row.hertz !== null && row.hertz >= hertz - DUST) return true;
  return false;
}
