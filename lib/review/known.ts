import { NOT_MEASURED, type PerPhase } from '@/lib/energy/measured';

/** What is known of a motor in its set besides its plate and the place. */
export interface Known {
  /** Amps in L1, L2 and L3 as they were read last of this very motor. */
  amps: PerPhase;
  /** How many kinds of motor on the shelves could go into the set, were it after a check; null: nobody counted. */
  spares: number | null;
}

export const NOTHING_KNOWN: Known = { amps: NOT_MEASURED.amps, spares: null };
