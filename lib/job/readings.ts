import type { StepId } from './step-ids';

/** Amps of L1, L2 and L3, measured running; of a single-phase motor the first alone. */
export type PhaseAmps = readonly [number | null, number | null, number | null];

/** What was read and ticked at the pump, as plain data. Null: not read. */
export interface Readings {
  /** Steps whose box was ticked. */
  ticked: readonly StepId[];
  /** Winding to earth. */
  insulationMohm: number | null;
  /** Which way it turned, against what the pump needs. */
  rotation: 'right' | 'wrong' | null;
  overloadA: number | null;
  /** The greatest lift of a foot when its bolt is loosened. */
  softFootMm: number | null;
  offsetMm: number | null;
  /** Difference of the gap at the coupling's edge, for each 100 mm of its diameter. */
  gapMmPer100: number | null;
  amps: PhaseAmps;
}

export type ReadingValue = 'insulationMohm' | 'overloadA' | 'softFootMm' | 'offsetMm' | 'gapMmPer100';

export const NO_READINGS: Readings = {
  ticked: [],
  insulationMohm: null,
  rotation: null,
  overloadA: null,
  softFootMm: null,
  offsetMm: null,
  gapMmPer100: null,
  amps: [null, null, null],
};

/** The greatest value a field takes, in its unit; zero is allowed of all but an overload's setting. */
export const MOST: Readonly<Record<ReadingValue | 'amps', number>> = {
  insulationMohm: 1_000_000,
  overloadA: 5_000,
  softFootMm: 20,
  offsetMm: 20,
  gapMmPer100: 20,
  amps: 5_000,
};

/** False where nothing was ticked and nothing read. */
export function isTold({ ticked, rotation, amps, ...values }: Readings): boolean {
  return (
    ticked.length > 0 ||
    rotation !== null ||
    amps.some((one) => one !== null) ||
    Object.values(values).some((one) => one !== null)
  );
}
