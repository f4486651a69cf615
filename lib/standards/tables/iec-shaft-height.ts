// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IecShaftHeightRow {
  to: number | null;
  deviations: Cell<readonly [upper: number, lower: number]>;
}

export const iecShaftHeight: Table<IecShaftHeightRow> = {
  source: {
    "standard": "ISO 286-2; IEC 60072-1:1991 clauses 6 to 8 and Annex C; DIN 42955; EN 50347",
    "edition": "IEC 60072-1:1991 and 2022",
    "clause": "tolerance of H (clause number from memory)",
    "texts": {}
  },
  unit: "mm",
  columns: {
    "to": "shaft height up to and including; null: above the row before",
    "deviations": "upper and lower deviation from nominal, with their sign"
  },
  rows: [
    {"to":250,"deviations":[[0,-0.5],0,""]},
    {"to":null,"deviations":[[0,-1],0,""]},
  ],
  notes: [
    "The tolerance only goes down: an IEC motor is never higher than its frame number, so shims lift it to line."
  ],
};
