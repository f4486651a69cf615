// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** `pct`: at 3600, 1800, 1200, 900, 720, 600 and 514 rpm; null where the standard prints nothing. */
export interface LockedRotorTorqueRow {
  design: 'AB' | 'C';
  hp: number;
  pct: readonly (Cell | null)[];
}

export const lockedRotorTorque: Table<LockedRotorTorqueRow> = {
  source: {
    "standard": "NEMA MG 1",
    "edition": "MG 1-2016",
    "clause": "MG 1-12.38",
    "texts": {
      "ETB-TQ": "Engineering ToolBox, IEC and NEMA standard torques (IEC Design N beside NEMA Design B, 3-20 hp, 2 and 4 pole)"
    }
  },
  unit: "per cent of full-load torque",
  columns: {
    "design": "design letter: A and B share one table",
    "hp": "rated power",
    "pct": "least locked-rotor torque at synchronous speeds of 3600, 1800, 1200, 900, 720, 600, 514 rpm (60 Hz)"
  },
  rows: [
    {"design":"AB","hp":0.5,"pct":[null,null,null,[140,0,""],[140,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":0.75,"pct":[null,null,[175,0,""],[135,0,""],[135,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":1,"pct":[null,[275,0,""],[170,0,""],[135,0,""],[135,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":1.5,"pct":[[175,0,""],[250,0,""],[165,0,""],[130,0,""],[130,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":2,"pct":[[170,0,""],[235,0,""],[160,0,""],[130,0,""],[125,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":3,"pct":[[160,1,"ETB-TQ"],[215,1,"ETB-TQ"],[155,0,""],[130,0,""],[125,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":5,"pct":[[150,1,"ETB-TQ"],[185,1,"ETB-TQ"],[150,0,""],[130,0,""],[125,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":7.5,"pct":[[140,1,"ETB-TQ"],[175,1,"ETB-TQ"],[150,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":10,"pct":[[135,1,"ETB-TQ"],[165,1,"ETB-TQ"],[150,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":15,"pct":[[130,0,""],[160,0,""],[140,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":20,"pct":[[130,1,"ETB-TQ"],[150,1,"ETB-TQ"],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":25,"pct":[[130,0,""],[150,0,""],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":30,"pct":[[130,0,""],[150,0,""],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":40,"pct":[[125,0,""],[140,0,""],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":50,"pct":[[120,0,""],[140,0,""],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":60,"pct":[[120,0,""],[140,0,""],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":75,"pct":[[105,0,""],[140,0,""],[135,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":100,"pct":[[105,0,""],[125,0,""],[125,0,""],[125,0,""],[120,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":125,"pct":[[100,0,""],[110,0,""],[125,0,""],[120,0,""],[115,0,""],[115,0,""],[110,0,""]]},
    {"design":"AB","hp":150,"pct":[[100,0,""],[110,0,""],[120,0,""],[120,0,""],[115,0,""],[115,0,""],null]},
    {"design":"AB","hp":200,"pct":[[100,0,""],[100,0,""],[120,0,""],[120,0,""],[115,0,""],null,null]},
    {"design":"AB","hp":250,"pct":[[70,0,""],[80,0,""],[100,0,""],[100,0,""],null,null,null]},
    {"design":"AB","hp":300,"pct":[[70,0,""],[80,0,""],[100,0,""],null,null,null,null]},
    {"design":"AB","hp":350,"pct":[[70,0,""],[80,0,""],[100,0,""],null,null,null,null]},
    {"design":"AB","hp":400,"pct":[[70,0,""],[80,0,""],null,null,null,null,null]},
    {"design":"AB","hp":450,"pct":[[70,0,""],[80,0,""],null,null,null,null,null]},
    {"design":"AB","hp":500,"pct":[[70,0,""],[80,0,""],null,null,null,null,null]},
    {"design":"C","hp":1,"pct":[null,[285,0,""],[255,0,""],[225,0,""],null,null,null]},
    {"design":"C","hp":1.5,"pct":[null,[285,0,""],[250,0,""],[225,0,""],null,null,null]},
    {"design":"C","hp":2,"pct":[null,[285,0,""],[250,0,""],[225,0,""],null,null,null]},
    {"design":"C","hp":3,"pct":[null,[270,0,""],[250,0,""],[225,0,""],null,null,null]},
    {"design":"C","hp":5,"pct":[null,[255,0,""],[250,0,""],[225,0,""],null,null,null]},
    {"design":"C","hp":7.5,"pct":[null,[250,0,""],[225,0,""],[200,0,""],null,null,null]},
    {"design":"C","hp":10,"pct":[null,[250,0,""],[225,0,""],[200,0,""],null,null,null]},
    {"design":"C","hp":15,"pct":[null,[225,0,""],[210,0,""],[200,0,""],null,null,null]},
    {"design":"C","hp":20,"pct":[null,[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"C","hp":25,"pct":[null,[200,0,""],[200,0,""],[200,0,""],null,null,null]},
    {"design":"C","hp":200,"pct":[null,[200,0,""],[200,0,""],[200,0,""],null,null,null]},
  ],
  notes: [
    "Columns are 60 Hz synchronous speeds; the 900 column of breakdown and pull-up also serves slower speeds. Multiply by full-load torque. Cells read at 3, 5, 7.5, 10 and 20 hp for 2 and 4 poles all matched memory.",
    "Design C is printed to 200 hp; 25 to 200 hp is one row, carried here by its two ends.",
    "Design D, 4 to 8 poles up to 150 hp: 275 per cent or more (read in one text)."
  ],
};
