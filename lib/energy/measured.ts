/** A figure for each of three lines, or between them; null: not read. Of a single-phase motor the first alone. */
export type PerPhase = readonly [number | null, number | null, number | null];

/** What was read at a set while it ran. Null: not read. */
export interface Measured {
  /** Volts between L1-L2, L2-L3 and L3-L1. */
  volts: PerPhase;
  /** Amps in L1, L2 and L3. */
  amps: PerPhase;
  /** Electrical power into the motor. */
  inputKw: number | null;
  /** Per unit. */
  powerFactor: number | null;
  rpm: number | null;
  /** What the drive shows; null on the mains, or not read. */
  hertz: number | null;
}

export const NOT_MEASURED: Measured = {
  volts: [null, null, null],
  amps: [null, null, null],
  inputKw: null,
  powerFactor: null,
  rpm: null,
  hertz: null,
};

/** The mean of what was read; null: nothing was. */
export function meanRead(three: PerPhase): number | null {
  const read = three.filter((one) => one !== null);
  return read.length === 0 ? null : read.reduce((sum, one) => sum + one, 0) / read.length;
}
