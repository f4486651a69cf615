// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IecKeysRow {
  over: number;
  to: number;
  b: Cell;
  h: Cell;
}

export const iecKeys: Table<IecKeysRow> = {
  source: {
    "standard": "ISO/R 773:1969, DIN 6885-1:1968 (IEC 60072-1 takes over the section)",
    "edition": "ISO/R 773:1969, DIN 6885-1:1968",
    "clause": "Table 1 (clause number from memory)",
    "texts": {
      "K1": "Machine-design page with the DIN 6885-1 parallel-key series, shaft over 6 to 130 mm (public page)",
      "K2": "Fastener reference page with the DIN 6885 / ISO 773 key series, shaft 6 to 58 mm (rest cut off) (public page)"
    }
  },
  unit: "mm",
  columns: {
    "over": "shaft diameter over",
    "to": "shaft diameter up to and including",
    "b": "key width",
    "h": "key height"
  },
  rows: [
    {"over":6,"to":8,"b":[2,2,"K1 K2"],"h":[2,2,"K1 K2"]},
    {"over":8,"to":10,"b":[3,2,"K1 K2"],"h":[3,2,"K1 K2"]},
    {"over":10,"to":12,"b":[4,2,"K1 K2"],"h":[4,2,"K1 K2"]},
    {"over":12,"to":17,"b":[5,2,"K1 K2"],"h":[5,2,"K1 K2"]},
    {"over":17,"to":22,"b":[6,2,"K1 K2"],"h":[6,2,"K1 K2"]},
    {"over":22,"to":30,"b":[8,2,"K1 K2"],"h":[7,2,"K1 K2"]},
    {"over":30,"to":38,"b":[10,2,"K1 K2"],"h":[8,2,"K1 K2"]},
    {"over":38,"to":44,"b":[12,2,"K1 K2"],"h":[8,2,"K1 K2"]},
    {"over":44,"to":50,"b":[14,2,"K1 K2"],"h":[9,2,"K1 K2"]},
    {"over":50,"to":58,"b":[16,2,"K1 K2"],"h":[10,2,"K1 K2"]},
    {"over":58,"to":65,"b":[18,1,"K1"],"h":[11,1,"K1"]},
    {"over":65,"to":75,"b":[20,1,"K1"],"h":[12,1,"K1"]},
    {"over":75,"to":85,"b":[22,1,"K1"],"h":[14,1,"K1"]},
    {"over":85,"to":95,"b":[25,1,"K1"],"h":[14,1,"K1"]},
    {"over":95,"to":110,"b":[28,1,"K1"],"h":[16,1,"K1"]},
    {"over":110,"to":130,"b":[32,1,"K1"],"h":[18,1,"K1"]},
    {"over":130,"to":150,"b":[36,0,""],"h":[20,0,""]},
  ],
  notes: [],
};
