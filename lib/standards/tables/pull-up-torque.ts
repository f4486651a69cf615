// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** `pct`: at 3600, 1800, 1200, 900, 720, 600 and 514 rpm; null where the standard prints nothing. */
export interface PullUpTorqueRow {
  design: 'AB' | 'C';
  hp: number;
  pct: readonly (Cell | null)[];
}

export const pullUpTorque: Table<PullUpTorqueRow> = {
  source: {
    "standard": "NEMA MG 1",
    "edition": "MG 1-2016",
    "clause": "MG 1-12.40",
    "texts": {
      "ETB-TQ": "Engineering ToolBox, IEC and NEMA standard torques (IEC Design N beside NEMA Design B, 3-20 hp, 2 and 4 pole)"
    }
  },
  unit: "per cent of full-load torque",
  columns: {
    "design": "design letter: A and B share one table",
    "hp": "rated power",
    "pct": "least pull-up torque at synchronous speeds of 3600, 1800, 1200, 900, 720, 600, 514 rpm (60 Hz)"
  },
  rows: [
    {"design":"AB","hp":0.5,"pct":[null,null,null,[100,0,""],null,null,null]},
    {"design":"AB","hp":0.75,"pct":[null,null,[120,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":1,"pct":[null,[190,0,""],[120,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":1.5,"pct":[[120,0,""],[175,0,""],[115,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":2,"pct":[[120,0,""],[165,0,""],[110,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":3,"pct":[[110,1,"ETB-TQ"],[150,1,"ETB-TQ"],[110,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":5,"pct":[[105,1,"ETB-TQ"],[130,1,"ETB-TQ"],[105,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":7.5,"pct":[[100,1,"ETB-TQ"],[120,1,"ETB-TQ"],[105,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":10,"pct":[[100,1,"ETB-TQ"],[115,1,"ETB-TQ"],[105,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":15,"pct":[[100,0,""],[110,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":20,"pct":[[100,1,"ETB-TQ"],[105,1,"ETB-TQ"],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":25,"pct":[[100,0,""],[105,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":30,"pct":[[100,0,""],[105,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":40,"pct":[[100,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":50,"pct":[[100,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":60,"pct":[[100,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":75,"pct":[[95,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":100,"pct":[[95,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":125,"pct":[[90,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":150,"pct":[[90,0,""],[100,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":200,"pct":[[90,0,""],[90,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":250,"pct":[[65,0,""],[75,0,""],[90,0,""],[90,0,""],null,null,null]},
    {"design":"AB","hp":300,"pct":[[65,0,""],[75,0,""],[90,0,""],null,null,null,null]},
    {"design":"AB","hp":350,"pct":[[65,0,""],[75,0,""],[90,0,""],null,null,null,null]},
    {"design":"AB","hp":400,"pct":[[65,0,""],[75,0,""],null,null,null,null,null]},
    {"design":"AB","hp":450,"pct":[[65,0,""],[75,0,""],null,null,null,null,null]},
    {"design":"AB","hp":500,"pct":[[65,0,""],[75,0,""],null,null,null,null,null]},
  ],
  notes: [
    "Columns are 60 Hz synchronous speeds; the 900 column of breakdown and pull-up also serves slower speeds. Multiply by full-load torque. Cells read at 3, 5, 7.5, 10 and 20 hp for 2 and 4 poles all matched memory.",
    "Designs C and D: no table was read."
  ],
};
