import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { drivenLoadOf } from '../context/driven-load';
import { ratingRowOf } from '../context/rating-row';
import { startingTorque } from '../starting/starting-torque';

/** Margin at rest over the breakaway torque, as the judgement asks it: 20 to 30 %, common practice, no source. */
const MARGIN = 1.2;
/** The highest locked-rotor torque that a design letter promises: MG 1-12.38, design D (read in one text). */
const MOST_PCT = 275;
/** Figures of torque are stamped in fives. */
const STEP_PCT = 5;
const DUST = 1e-9;

/** Torque asked beyond what the design letter promises, per cent of full load; null: the letter is enough, or nothing tells. */
export type TorqueAsked = Pick<Motor, 'lockedRotorPct' | 'breakdownPct'>;

const NONE: TorqueAsked = { lockedRotorPct: null, breakdownPct: null };

/**
 * What a motor must start with so that the pump breaks away with its margin, as the set starts it. On a drive it is the
 * breakdown torque that bounds it. Beyond what any design letter promises nothing is asked: no such motor is usual.
 */
export function torqueAskedFor(set: PumpSet, motor: Motor): TorqueAsked {
  const { start } = set.supply;
  const { torqueNm } = drivenLoadOf(set);
  const share = set.load.breakawayPct;
  if (torqueNm === null || share === null || start === null) return NONE;
  const need = (MARGIN * torqueNm * share) / 100;
  const key = start === 'drive' ? 'breakdownPct' : 'lockedRotorPct';
  const has = torqueOf(set, motor);
  if (has === null || has >= need * (1 - DUST)) return NONE;
  const per100 = torqueOf(set, { ...motor, [key]: 100 });
  if (per100 === null || per100 <= 0) return NONE;
  const pct = STEP_PCT * Math.ceil((100 * need) / per100 / STEP_PCT - DUST);
  if (pct > MOST_PCT) return NONE;
  // On a drive its own current may be what gives so little: more breakdown torque is then no help.
  const asked = { ...NONE, [key]: pct };
  const got = torqueOf(set, { ...motor, ...asked });
  return got !== null && got >= need * (1 - DUST) ? asked : NONE;
}

function torqueOf(set: PumpSet, motor: Motor): number | null {
  const { nm } = startingTorque(set, motor, ratingRowOf(set, motor), set.supply.start);
  return nm;
}
