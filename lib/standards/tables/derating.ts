// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** `factors`: at 1000, 1500, 2000, 2500, 3000, 3500 and 4000 m. */
export interface DeratingRow {
  ambientC: number;
  factors: readonly Cell[];
}

export const derating: Table<DeratingRow> = {
  source: {
    "standard": "none: a motor application manual. NEMA MG 1 14.3 and IEC 60034-1 6 set only the limits of 40 degC and 1000 m",
    "edition": "undated",
    "clause": "reduction factors for ambient temperature and altitude",
    "texts": {
      "AMBALT": "Application manual for NEMA motors, reduction factors for ambient temperature and altitude (maker name withheld); 1-200 hp, sine-wave, not explosion-proof"
    }
  },
  unit: "multiplier of rated output",
  columns: {
    "ambientC": "ambient, degC",
    "factors": "at 1000, 1500, 2000, 2500, 3000, 3500, 4000 m"
  },
  rows: [
    {"ambientC":30,"factors":[[1.06,1,"AMBALT"],[1.03,1,"AMBALT"],[1,1,"AMBALT"],[0.95,1,"AMBALT"],[0.91,1,"AMBALT"],[0.87,1,"AMBALT"],[0.82,1,"AMBALT"]]},
    {"ambientC":35,"factors":[[1.03,1,"AMBALT"],[1,1,"AMBALT"],[0.97,1,"AMBALT"],[0.93,1,"AMBALT"],[0.89,1,"AMBALT"],[0.84,1,"AMBALT"],[0.79,1,"AMBALT"]]},
    {"ambientC":40,"factors":[[1,1,"AMBALT"],[0.97,1,"AMBALT"],[0.94,1,"AMBALT"],[0.9,1,"AMBALT"],[0.86,1,"AMBALT"],[0.82,1,"AMBALT"],[0.77,1,"AMBALT"]]},
    {"ambientC":45,"factors":[[0.96,1,"AMBALT"],[0.93,1,"AMBALT"],[0.9,1,"AMBALT"],[0.86,1,"AMBALT"],[0.83,1,"AMBALT"],[0.79,1,"AMBALT"],[0.74,1,"AMBALT"]]},
    {"ambientC":50,"factors":[[0.92,1,"AMBALT"],[0.89,1,"AMBALT"],[0.86,1,"AMBALT"],[0.83,1,"AMBALT"],[0.79,1,"AMBALT"],[0.75,1,"AMBALT"],[0.71,1,"AMBALT"]]},
    {"ambientC":55,"factors":[[0.87,1,"AMBALT"],[0.84,1,"AMBALT"],[0.82,1,"AMBALT"],[0.78,1,"AMBALT"],[0.75,1,"AMBALT"],[0.71,1,"AMBALT"],[0.67,1,"AMBALT"]]},
    {"ambientC":60,"factors":[[0.82,1,"AMBALT"],[0.8,1,"AMBALT"],[0.77,1,"AMBALT"],[0.74,1,"AMBALT"],[0.71,1,"AMBALT"],[0.67,1,"AMBALT"],[0.63,1,"AMBALT"]]},
  ],
  notes: [
    "For 1 to 200 hp on a sine-wave supply, not explosion-proof, service factor not used. A guideline, not a standard.",
    "A second text prints altitude bands at 40 degC (0.97 to 5000 ft, 0.94 to 6600, 0.90 to 8300, 0.86 to 9900, 0.82 to 11 500) that agree.",
    "The bands hold up to and including their upper end, so a height between two columns takes the higher one."
  ],
};
