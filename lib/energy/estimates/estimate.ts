export const ESTIMATE_METHODS = ['input-power', 'output', 'line-current', 'slip', 'slip-at-voltage'] as const;
export type EstimateMethod = (typeof ESTIMATE_METHODS)[number];

/** One way to tell the load from readings, in per cent of rated power. It lies between `lowPct` and `highPct`. */
export interface LoadEstimate {
  made: true;
  method: EstimateMethod;
  loadPct: number;
  lowPct: number;
  highPct: number;
  /** The sum with its figures. */
  arithmetic: string;
  cite: string;
  caveats: readonly string[];
}

/** A way that the readings, or the plate, do not allow. */
export interface NotMade {
  made: false;
  method: EstimateMethod;
  why: string;
}

export const notMade = (method: EstimateMethod, why: string): NotMade => ({ made: false, method, why });
