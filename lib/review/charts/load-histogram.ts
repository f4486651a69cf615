/** How many sets are loaded so much; `toPct` null: that and more. */
export interface LoadBin {
  fromPct: number;
  toPct: number | null;
  sets: number;
}

export interface LoadHistogram {
  bins: LoadBin[];
  /** Sets of which the load is not known. */
  unknown: number;
}

const STEP_PCT = 10;
/** From here on all stand together. */
const LAST_PCT = 120;

/** Loads at duty, per cent of rated power, in steps of 10 %; a load on an edge belongs to the step above. Null: not known. */
export function loadHistogram(loads: readonly (number | null)[]): LoadHistogram {
  const bins = Array.from({ length: LAST_PCT / STEP_PCT + 1 }, (_, i): LoadBin => {
    const fromPct = i * STEP_PCT;
    return { fromPct, toPct: fromPct === LAST_PCT ? null : fromPct + STEP_PCT, sets: 0 };
  });
  let unknown = 0;
  for (const load of loads) {
    const bin = load === null ? undefined : bins[Math.min(Math.max(0, Math.floor(load / STEP_PCT)), bins.length - 1)];
    if (bin === undefined) unknown += 1;
    else bin.sets += 1;
  }
  return { bins, unknown };
}
