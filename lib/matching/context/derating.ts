import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { ambientAltitudeFactor, USUAL_ALTITUDE_M, USUAL_AMBIENT_C } from '@/lib/standards/ambient-altitude-factor';
import { BALANCED_UP_TO_PCT, unbalanceFactor } from '@/lib/standards/unbalance-factor';

/** Share of rated power left by ambient, altitude and voltage unbalance; each with its reason, all multiplied. */
export interface Derating {
  factor: number;
  parts: readonly { what: 'ambient' | 'altitude' | 'unbalance'; factor: number; cite: string }[];
  /** True when the derating could not be told (ambient above every table, altitude above 4000 m ...). */
  isUnknown: boolean;
}

/**
 * What the surroundings leave of the plate. A motor without a plated ambient is taken as built for the usual 40 °C; one
 * plated for another ambient is compared with what that plate already allows for. What the set does not state derates
 * nothing. A drive keeps the unbalance of its own supply from the motor.
 */
export function deratingOf(set: PumpSet, candidate: Motor): Derating {
  const { ambientC, altitudeM } = set.surroundings;
  const unbalancePct = set.supply.start === 'drive' ? null : set.supply.unbalancePct;
  const platedC = candidate.ambientC ?? USUAL_AMBIENT_C;
  const isWarm = ambientC !== null && ambientC > platedC;
  const isHigh = altitudeM !== null && altitudeM > USUAL_ALTITUDE_M;
  const isUnbalanced = unbalancePct !== null && unbalancePct > BALANCED_UP_TO_PCT;
  if (!isWarm && !isHigh && !isUnbalanced) return NONE;

  const heat = isWarm ? share(ambientC, platedC, USUAL_ALTITUDE_M) : 1;
  // Air is cooler up there: an ambient below the plate's makes up for height, as the table's 30 °C row shows.
  const both = isHigh ? share(ambientC ?? platedC, platedC, altitudeM) : heat;
  const unbalance = isUnbalanced ? unbalanceFactor(unbalancePct) : 1;
  if (heat === null || both === null || unbalance === null) return UNKNOWN;

  const parts: { what: 'ambient' | 'altitude' | 'unbalance'; factor: number; cite: string }[] = [];
  if (heat < 1) parts.push({ what: 'ambient', factor: heat, cite: AMBIENT_CITE });
  if (both < heat) parts.push({ what: 'altitude', factor: both / heat, cite: ALTITUDE_CITE });
  if (unbalance < 1) parts.push({ what: 'unbalance', factor: unbalance, cite: UNBALANCE_CITE });
  return { factor: both * unbalance, parts, isUnknown: false };
}

const NONE: Derating = { factor: 1, parts: [], isUnknown: false };
const UNKNOWN: Derating = { factor: 1, parts: [], isUnknown: true };

const AMBIENT_CITE =
  'Above the plated ambient: a motor application manual, ambient and altitude factors (read in one text)';
const ALTITUDE_CITE =
  'Above 1000 m, NEMA MG 1 14.4: a motor application manual, ambient and altitude factors (read in one text)';
const UNBALANCE_CITE = 'NEMA MG 1 14.36.2, Figure 14-1 (read in one text)';

// The ambients with a printed row.
const COLDEST_PRINTED_C = 30;
const HOTTEST_PRINTED_C = 60;

/** Output here over the output at the plate's own ambient at 1000 m; never above 1. Null where nothing is printed. */
function share(ambientC: number, platedC: number, altitudeM: number): number | null {
  // A plate outside the rows gives no ratio: up to its own ambient only the height counts, above it nothing is known.
  if (platedC < COLDEST_PRINTED_C || platedC > HOTTEST_PRINTED_C)
    return ambientC > platedC ? null : ambientAltitudeFactor(USUAL_AMBIENT_C, altitudeM);
  const here = ambientAltitudeFactor(ambientC, altitudeM);
  const plated = ambientAltitudeFactor(platedC, USUAL_ALTITUDE_M);
  return here === null || plated === null ? null : Math.min(1, here / plated);
}
