// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Table } from '../table';

export interface IecNemaPairsRow {
  nema: string;
  iec: string;
  holesLineUp: boolean;
  texts: 0 | 1 | 2;
}

export const iecNemaPairs: Table<IecNemaPairsRow> = {
  source: {
    "standard": "NEMA MG 1 and IEC 60072-1",
    "edition": "frames of IEC 60072-1 and NEMA MG 1-2016 4.4.1 set side by side",
    "clause": "none: our own comparison",
    "texts": {}
  },
  unit: "none",
  columns: {
    "nema": "NEMA frame",
    "iec": "nearest IEC frame",
    "holesLineUp": "the foot holes can be bolted to the same base",
    "texts": "the weakest figure the comparison rests on"
  },
  rows: [
    {"nema":"56","iec":"80","holesLineUp":false,"texts":2},
    {"nema":"56","iec":"90S","holesLineUp":false,"texts":2},
    {"nema":"143T","iec":"90S","holesLineUp":false,"texts":2},
    {"nema":"145T","iec":"90L","holesLineUp":false,"texts":2},
    {"nema":"182T","iec":"112S","holesLineUp":true,"texts":0},
    {"nema":"182T","iec":"112M","holesLineUp":false,"texts":2},
    {"nema":"184T","iec":"112M","holesLineUp":true,"texts":2},
    {"nema":"213T","iec":"132S","holesLineUp":true,"texts":2},
    {"nema":"215T","iec":"132M","holesLineUp":true,"texts":2},
    {"nema":"254T","iec":"160M","holesLineUp":true,"texts":1},
    {"nema":"256T","iec":"160L","holesLineUp":true,"texts":1},
    {"nema":"284T","iec":"180M","holesLineUp":true,"texts":1},
    {"nema":"286T","iec":"180L","holesLineUp":true,"texts":1},
    {"nema":"324T","iec":"200M","holesLineUp":true,"texts":1},
    {"nema":"324T","iec":"200L","holesLineUp":false,"texts":1},
    {"nema":"326T","iec":"200L","holesLineUp":true,"texts":1},
    {"nema":"364T","iec":"225S","holesLineUp":true,"texts":1},
    {"nema":"365T","iec":"225M","holesLineUp":true,"texts":1},
    {"nema":"404T","iec":"250S","holesLineUp":true,"texts":0},
    {"nema":"404T","iec":"250M","holesLineUp":false,"texts":1},
    {"nema":"405T","iec":"250M","holesLineUp":true,"texts":1},
    {"nema":"444T","iec":"280S","holesLineUp":true,"texts":1},
    {"nema":"445T","iec":"280M","holesLineUp":true,"texts":1},
  ],
  notes: [
    "Never a straight swap: shaft and key are inch against metric."
  ],
};
