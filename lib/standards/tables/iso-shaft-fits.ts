// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IsoShaftFitsRow {
  fit: string;
  over: number;
  to: number;
  deviations: Cell<readonly [upper: number, lower: number]>;
}

export const isoShaftFits: Table<IsoShaftFitsRow> = {
  source: {
    "standard": "ISO 286-2; IEC 60072-1:1991 clauses 6 to 8 and Annex C; DIN 42955; EN 50347",
    "edition": "ISO 286-2:2010",
    "clause": "tables of shaft deviations (clause numbers from memory)",
    "texts": {
      "E2": "ANSI/EASA AR100-2020 recommended practice, Table 2-10 spigot diameter tolerances, IEC flange machines (cites IEC 60072-1, C.1.7) (public flip-book copy, page 12)",
      "J1": "Cutting-tool handbook page reproducing JIS B 0401 (same values as ISO 286-2) for regularly used shaft fits, to 80 mm (public page)",
      "J2": "Handbook page (second tool maker) with ISO shaft classes h6, js6, k6, m6; columns come out jumbled, matched by order (public document host)"
    }
  },
  unit: "mm sizes, µm deviations",
  columns: {
    "fit": "ISO class",
    "over": "diameter over",
    "to": "diameter up to and including",
    "deviations": "upper and lower deviation from nominal, with their sign"
  },
  rows: [
    {"fit":"j6","over":6,"to":10,"deviations":[[7,-2],0,""]},
    {"fit":"k6","over":6,"to":10,"deviations":[[10,1],1,"J1"]},
    {"fit":"m6","over":6,"to":10,"deviations":[[15,6],1,"J1"]},
    {"fit":"j6","over":10,"to":18,"deviations":[[8,-3],0,""]},
    {"fit":"k6","over":10,"to":18,"deviations":[[12,1],2,"J1 J2"]},
    {"fit":"m6","over":10,"to":18,"deviations":[[18,7],2,"J1 J2"]},
    {"fit":"j6","over":18,"to":30,"deviations":[[9,-4],0,""]},
    {"fit":"k6","over":18,"to":30,"deviations":[[15,2],2,"J1 J2"]},
    {"fit":"m6","over":18,"to":30,"deviations":[[21,8],2,"J1 J2"]},
    {"fit":"j6","over":30,"to":50,"deviations":[[11,-5],1,"E2"]},
    {"fit":"k6","over":30,"to":50,"deviations":[[18,2],2,"J1 J2"]},
    {"fit":"m6","over":30,"to":50,"deviations":[[25,9],2,"J1 J2"]},
    {"fit":"j6","over":50,"to":80,"deviations":[[12,-7],1,"E2"]},
    {"fit":"k6","over":50,"to":80,"deviations":[[21,2],2,"J1 J2"]},
    {"fit":"m6","over":50,"to":80,"deviations":[[30,11],2,"J1 J2"]},
    {"fit":"j6","over":80,"to":120,"deviations":[[13,-9],1,"E2"]},
    {"fit":"k6","over":80,"to":120,"deviations":[[25,3],1,"J2"]},
    {"fit":"m6","over":80,"to":120,"deviations":[[35,13],1,"J2"]},
  ],
  notes: [],
};
