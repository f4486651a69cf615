// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** `pct`: at 3600, 1800, 1200, 900, 720, 600 and 514 rpm; null where the standard prints nothing. */
export interface BreakdownTorqueRow {
  design: 'AB' | 'C';
  hp: number;
  pct: readonly (Cell | null)[];
}

export const breakdownTorque: Table<BreakdownTorqueRow> = {
  source: {
    "standard": "NEMA MG 1",
    "edition": "MG 1-2016",
    "clause": "MG 1-12.39",
    "texts": {
      "ETB-TQ": "Engineering ToolBox, IEC and NEMA standard torques (IEC Design N beside NEMA Design B, 3-20 hp, 2 and 4 pole)"
    }
  },
  unit: "per cent of full-load torque",
  columns: {
    "design": "design letter: A and B share one table",
    "hp": "rated power",
    "pct": "least breakdown torque at synchronous speeds of 3600, 1800, 1200, 900, 720, 600, 514 rpm (60 Hz)"
  },
  rows: [
    {"design":"AB","hp":0.5,"pct":[null,null,null,[225,0,""],null,null,null]},
    {"design":"AB","hp":0.75,"pct":[null,null,[275,0,""],[220,0,""],null,null,null]},
    {"design":"AB","hp":1,"pct":[null,[300,0,""],[265,0,""],[215,0,""],null,null,null]},
    {"design":"AB","hp":1.5,"pct":[[250,0,""],[280,0,""],[250,0,""],[210,0,""],null,null,null]},
    {"design":"AB","hp":2,"pct":[[240,0,""],[270,0,""],[240,0,""],[210,0,""],null,null,null]},
    {"design":"AB","hp":3,"pct":[[230,1,"ETB-TQ"],[250,1,"ETB-TQ"],[230,0,""],[205,0,""],null,null,null]},
    {"design":"AB","hp":5,"pct":[[215,1,"ETB-TQ"],[225,1,"ETB-TQ"],[215,0,""],[205,0,""],null,null,null]},
    {"design":"AB","hp":7.5,"pct":[[200,1,"ETB-TQ"],[215,1,"ETB-TQ"],[205,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":10,"pct":[[200,1,"ETB-TQ"],[200,1,"ETB-TQ"],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":15,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":20,"pct":[[200,1,"ETB-TQ"],[200,1,"ETB-TQ"],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":25,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":30,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":40,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":50,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":60,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":75,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":100,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":125,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":150,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":200,"pct":[[200,0,""],[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"AB","hp":250,"pct":[[175,0,""],[175,0,""],[175,0,""],[175,0,""],null,null,null]},
    {"design":"AB","hp":300,"pct":[[175,0,""],[175,0,""],[175,0,""],null,null,null,null]},
    {"design":"AB","hp":350,"pct":[[175,0,""],[175,0,""],[175,0,""],null,null,null,null]},
    {"design":"AB","hp":400,"pct":[[175,0,""],[175,0,""],null,null,null,null,null]},
    {"design":"AB","hp":450,"pct":[[175,0,""],[175,0,""],null,null,null,null,null]},
    {"design":"AB","hp":500,"pct":[[175,0,""],[175,0,""],null,null,null,null,null]},
  ],
  notes: [
    "Columns are 60 Hz synchronous speeds; the 900 column of breakdown and pull-up also serves slower speeds. Multiply by full-load torque. Cells read at 3, 5, 7.5, 10 and 20 hp for 2 and 4 poles all matched memory.",
    "Design C: a general table gives a band of 190 to 225 per cent (read in one text); no table by power was read."
  ],
};
