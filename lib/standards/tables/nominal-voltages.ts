// Written by scripts/make-supply-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface NominalVoltageRow {
  system: number;
  plate: Cell;
}

export const nominalVoltages: Table<NominalVoltageRow> = {
  source: {
    "standard": "NFPA 70 (NEC)",
    "edition": "2008",
    "clause": "NEC Table 430.250, voltage ranges of its columns",
    "texts": {
      "EUV": "Forum thread on 208 V, 400/230 V, 690/400 V and former 380/220 V systems; true 200 V nameplates for 208Y/120 systems",
      "NEC08": "NEC 2008 Table 430.250, reprinted page (scribd 250218196)"
    }
  },
  unit: "V between lines, 60 Hz",
  columns: {
    "system": "nominal system voltage",
    "plate": "rated voltage of the motors built for it"
  },
  rows: [
    {"system":208,"plate":[200,1,"EUV"]},
    {"system":240,"plate":[230,1,"NEC08"]},
    {"system":480,"plate":[460,1,"NEC08"]},
    {"system":600,"plate":[575,1,"NEC08"]},
    {"system":2400,"plate":[2300,0,""]},
    {"system":4160,"plate":[4000,0,""]},
    {"system":120,"plate":[115,1,"NEC08"]},
  ],
  notes: [
    "A plate is below its nominal system by design, for the drop to the motor (read in one text)."
  ],
};
