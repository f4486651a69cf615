// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface NemaAssemblyRow {
  code: string;
  box: Cell<string>;
}

export const nemaAssembly: Table<NemaAssemblyRow> = {
  source: {
    "standard": "IEC 60072-1 clause 4, IEC 60034-7 (box position letters), IEC 60034-8; NEMA MG 1 Parts 2 and 4",
    "edition": "MG 1-2016",
    "clause": "Part 4, Figure 4-6",
    "texts": {
      "M3": "UK drives supplier page on motor mounting: Code I/Code II list with shaft direction and feet side as seen from the drive end; IEC versus NEMA box position; drain, drip-cover and bearing cautions (public page)"
    }
  },
  unit: "none",
  columns: {
    "code": "assembly symbol",
    "box": "terminal box side and feet"
  },
  rows: [
    {"code":"F-1","box":["left side seen from the drive end, feet down",1,"M3"]},
    {"code":"F-2","box":["right side seen from the drive end, feet down",0,""]},
    {"code":"F-3","box":["top",1,"M3"]},
    {"code":"W-1 to W-8","box":["feet on a wall, shaft horizontal (W-1 to W-4) or vertical (W-5 to W-8); number also fixes box and shaft side",0,""]},
    {"code":"C-1, C-2","box":["feet on the ceiling, box left or right",0,""]},
  ],
  notes: [
    "W-1 to W-8: low confidence: take the exact picture from NEMA MG 1 Figure 4-6",
    "C-1, C-2: low confidence on which is which"
  ],
};
