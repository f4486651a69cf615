import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';

/** Share of rated power left by ambient, altitude and voltage unbalance; each with its reason, all multiplied. */
export interface Derating {
  factor: number;
  parts: readonly { what: 'ambient' | 'altitude' | 'unbalance'; factor: number; cite: string }[];
  /** True when the derating could not be told (ambient above every table, altitude above 4000 m ...). */
  isUnknown: boolean;
}

export function deratingOf(_set: PumpSet, _candidate: Motor): Derating {
  throw new Error('not yet written');
}
