// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface NemaFootFramesRow {
  frame: string;
  generation: 'small' | 'T' | 'U' | 'original';
  isShort: boolean;
  D: Cell;
  E: Cell;
  twoF: Cell;
  twoFAlso?: number;
  BA: Cell;
  H: Cell;
  isSlot: boolean;
  U: Cell;
  NW: Cell;
  S: Cell<number | 'flat'>;
}

export const nemaFootFrames: Table<NemaFootFramesRow> = {
  source: {
    "standard": "ANSI/NEMA MG 1-2016, Part 4, clause 4.4.1 (T and fractional frames); U and original frames follow superseded editions",
    "edition": "MG 1-2016; U and pre-1952 frames from superseded editions",
    "clause": "4.4.1",
    "texts": {
      "S1": "Open engineering data book of an ANSI-accredited pump-standards institute; transcribes MG 1 clauses 4.4.1, 4.4.4, 4.4.5 and Tables 18-28, 18-30, 18-33, 18-34 with their footnotes (https://github.com/hydraulic-institute/edb (snapshot f1aaddd, files under source/04_piping-materials-IV))",
      "S2": "One-page quick-reference dimension chart of a motor distributor (fractions of an inch; frames 42 to 449TS including U frames; keyseat table by shaft diameter) (public document host)",
      "S3": "Large frame chart reproduced on an engineering reference site, a bearing supplier page and two document hosts (one origin, so counted as ONE source); includes pre-1952 frames marked with a hash, and a C-face table (public engineering reference page and copies)",
      "S4": "Belt-drive maker table of frame, shaft diameter, rating and minimum sheave after MG 1-14.42 (rows 143T to 404T readable) (public document host)"
    }
  },
  unit: "inch",
  columns: {
    "frame": "frame",
    "generation": "small: fractional; T: since 1964; U: 1952 series; original: before 1952",
    "isShort": "short shaft",
    "D": "shaft centreline above the bottom of the feet",
    "E": "half of the foot-hole spacing across",
    "twoF": "foot-hole spacing along the shaft",
    "twoFAlso": "a second spacing along, on the same base",
    "BA": "shaft shoulder to the nearest foot holes",
    "H": "foot hole diameter or slot width",
    "isSlot": "H is a slot",
    "U": "shaft diameter",
    "NW": "shaft length from the shoulder (N-W)",
    "S": "keyseat width; flat: a flat and no key"
  },
  rows: [
    {"frame":"42","generation":"small","isShort":false,"D":[2.62,2,"S1 S2 S3"],"E":[1.75,2,"S1 S2 S3"],"twoF":[1.69,2,"S1 S2 S3"],"BA":[2.06,2,"S1 S2"],"H":[0.28,2,"S1 S2"],"isSlot":true,"U":[0.375,2,"S1 S3"],"NW":[1.12,2,"S1 S3"],"S":["flat",2,"S1 S2"]},
    {"frame":"48","generation":"small","isShort":false,"D":[3,2,"S1 S2 S3"],"E":[2.12,2,"S1 S2 S3"],"twoF":[2.75,2,"S1 S2 S3"],"BA":[2.5,2,"S1 S2"],"H":[0.34,2,"S1 S2"],"isSlot":true,"U":[0.5,2,"S1 S3"],"NW":[1.5,2,"S1 S3"],"S":["flat",2,"S1 S2"]},
    {"frame":"48H","generation":"small","isShort":false,"D":[3,2,"S1 S3"],"E":[2.12,2,"S1 S3"],"twoF":[4.75,2,"S1 S3"],"BA":[2.5,2,"S1 S3"],"H":[0.34,2,"S1 S3"],"isSlot":true,"U":[0.5,2,"S1 S3"],"NW":[1.5,2,"S1 S3"],"S":["flat",2,"S1 S2"]},
    {"frame":"56","generation":"small","isShort":false,"D":[3.5,2,"S1 S2 S3"],"E":[2.44,2,"S1 S2 S3"],"twoF":[3,2,"S1 S2 S3"],"BA":[2.75,2,"S1 S2"],"H":[0.34,2,"S1 S2"],"isSlot":true,"U":[0.625,2,"S1 S3"],"NW":[1.88,2,"S1 S3"],"S":[0.188,2,"S1 S2"]},
    {"frame":"56H","generation":"small","isShort":false,"D":[3.5,2,"S1 S2 S3"],"E":[2.44,2,"S1 S2 S3"],"twoF":[5,2,"S1 S3"],"twoFAlso":3,"BA":[2.75,2,"S1 S2"],"H":[0.34,2,"S1 S2"],"isSlot":true,"U":[0.625,2,"S1 S3"],"NW":[1.88,2,"S1 S3"],"S":[0.188,2,"S1 S2"]},
    {"frame":"143T","generation":"T","isShort":false,"D":[3.5,2,"S1 S2 S3"],"E":[2.75,2,"S1 S2 S3"],"twoF":[4,2,"S1 S2 S3"],"BA":[2.25,2,"S1 S2"],"H":[0.34,2,"S1 S2"],"isSlot":false,"U":[0.875,2,"S1 S3 S4"],"NW":[2.25,2,"S1 S3"],"S":[0.188,2,"S1 S2"]},
    {"frame":"145T","generation":"T","isShort":false,"D":[3.5,2,"S1 S2 S3"],"E":[2.75,2,"S1 S2 S3"],"twoF":[5,2,"S1 S2 S3"],"BA":[2.25,2,"S1 S2"],"H":[0.34,2,"S1 S2"],"isSlot":false,"U":[0.875,2,"S1 S3 S4"],"NW":[2.25,2,"S1 S3"],"S":[0.188,2,"S1 S2"]},
    {"frame":"182T","generation":"T","isShort":false,"D":[4.5,2,"S1 S2 S3"],"E":[3.75,2,"S1 S2 S3"],"twoF":[4.5,2,"S1 S2 S3"],"BA":[2.75,2,"S1 S3"],"H":[0.41,2,"S1 S2"],"isSlot":false,"U":[1.125,2,"S1 S3 S4"],"NW":[2.75,2,"S1 S3"],"S":[0.25,2,"S1 S2"]},
    {"frame":"184T","generation":"T","isShort":false,"D":[4.5,2,"S1 S2 S3"],"E":[3.75,2,"S1 S2 S3"],"twoF":[5.5,2,"S1 S2 S3"],"BA":[2.75,2,"S1 S3"],"H":[0.41,2,"S1 S2"],"isSlot":false,"U":[1.125,2,"S1 S3 S4"],"NW":[2.75,2,"S1 S3"],"S":[0.25,2,"S1 S2"]},
    {"frame":"213T","generation":"T","isShort":false,"D":[5.25,2,"S1 S2 S3"],"E":[4.25,2,"S1 S2"],"twoF":[5.5,2,"S1 S2"],"BA":[3.5,2,"S1 S2"],"H":[0.41,2,"S1 S2"],"isSlot":false,"U":[1.375,2,"S1 S3 S4"],"NW":[3.38,2,"S1 S3"],"S":[0.312,2,"S1 S2"]},
    {"frame":"215T","generation":"T","isShort":false,"D":[5.25,2,"S1 S2 S3"],"E":[4.25,2,"S1 S2"],"twoF":[7,2,"S1 S2"],"BA":[3.5,2,"S1 S2"],"H":[0.41,2,"S1 S2"],"isSlot":false,"U":[1.375,2,"S1 S3 S4"],"NW":[3.38,2,"S1 S3"],"S":[0.312,2,"S1 S2"]},
    {"frame":"254T","generation":"T","isShort":false,"D":[6.25,2,"S1 S2 S3"],"E":[5,2,"S1 S2"],"twoF":[8.25,2,"S1 S2"],"BA":[4.25,2,"S1 S2"],"H":[0.53,2,"S1 S2"],"isSlot":false,"U":[1.625,2,"S1 S3 S4"],"NW":[4,2,"S1 S3"],"S":[0.375,2,"S1 S2"]},
    {"frame":"256T","generation":"T","isShort":false,"D":[6.25,2,"S1 S2 S3"],"E":[5,2,"S1 S2"],"twoF":[10,2,"S1 S2"],"BA":[4.25,2,"S1 S2"],"H":[0.53,2,"S1 S2"],"isSlot":false,"U":[1.625,2,"S1 S3 S4"],"NW":[4,2,"S1 S3"],"S":[0.375,2,"S1 S2"]},
    {"frame":"284T","generation":"T","isShort":false,"D":[7,2,"S1 S2 S3"],"E":[5.5,2,"S1 S2"],"twoF":[9.5,2,"S1 S2"],"BA":[4.75,2,"S1 S2"],"H":[0.53,2,"S1 S2"],"isSlot":false,"U":[1.875,2,"S1 S3 S4"],"NW":[4.62,2,"S1 S3"],"S":[0.5,2,"S1 S2"]},
    {"frame":"284TS","generation":"T","isShort":true,"D":[7,2,"S1 S2 S3"],"E":[5.5,2,"S1 S2"],"twoF":[9.5,2,"S1 S2"],"BA":[4.75,2,"S1 S2"],"H":[0.53,2,"S1 S2"],"isSlot":false,"U":[1.625,1,"S1"],"NW":[3.25,1,"S1"],"S":[0.375,2,"S1 S2"]},
    {"frame":"286T","generation":"T","isShort":false,"D":[7,2,"S1 S2 S3"],"E":[5.5,2,"S1 S2"],"twoF":[11,2,"S1 S2"],"BA":[4.75,2,"S1 S2"],"H":[0.53,2,"S1 S2"],"isSlot":false,"U":[1.875,2,"S1 S3 S4"],"NW":[4.62,2,"S1 S3"],"S":[0.5,2,"S1 S2"]},
    {"frame":"286TS","generation":"T","isShort":true,"D":[7,2,"S1 S2 S3"],"E":[5.5,2,"S1 S2"],"twoF":[11,2,"S1 S2"],"BA":[4.75,2,"S1 S2"],"H":[0.53,2,"S1 S2"],"isSlot":false,"U":[1.625,1,"S1"],"NW":[3.25,1,"S1"],"S":[0.375,2,"S1 S2"]},
    {"frame":"324T","generation":"T","isShort":false,"D":[8,2,"S1 S2 S3"],"E":[6.25,2,"S1 S2"],"twoF":[10.5,2,"S1 S2"],"BA":[5.25,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[2.125,2,"S1 S4"],"NW":[5.25,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"324TS","generation":"T","isShort":true,"D":[8,2,"S1 S2 S3"],"E":[6.25,2,"S1 S2"],"twoF":[10.5,2,"S1 S2"],"BA":[5.25,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[1.875,1,"S1"],"NW":[3.75,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"326T","generation":"T","isShort":false,"D":[8,2,"S1 S2 S3"],"E":[6.25,2,"S1 S2"],"twoF":[12,2,"S1 S2"],"BA":[5.25,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[2.125,2,"S1 S4"],"NW":[5.25,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"326TS","generation":"T","isShort":true,"D":[8,2,"S1 S2 S3"],"E":[6.25,2,"S1 S2"],"twoF":[12,2,"S1 S2"],"BA":[5.25,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[1.875,1,"S1"],"NW":[3.75,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"364T","generation":"T","isShort":false,"D":[9,2,"S1 S2 S3"],"E":[7,2,"S1 S2"],"twoF":[11.25,2,"S1 S2"],"BA":[5.88,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[2.375,2,"S1 S4"],"NW":[5.88,1,"S1"],"S":[0.625,2,"S1 S2"]},
    {"frame":"364TS","generation":"T","isShort":true,"D":[9,2,"S1 S2 S3"],"E":[7,2,"S1 S2"],"twoF":[11.25,2,"S1 S2"],"BA":[5.88,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[1.875,1,"S1"],"NW":[3.75,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"365T","generation":"T","isShort":false,"D":[9,2,"S1 S2 S3"],"E":[7,2,"S1 S2"],"twoF":[12.25,2,"S1 S2"],"BA":[5.88,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[2.375,2,"S1 S4"],"NW":[5.88,1,"S1"],"S":[0.625,2,"S1 S2"]},
    {"frame":"365TS","generation":"T","isShort":true,"D":[9,2,"S1 S2 S3"],"E":[7,2,"S1 S2"],"twoF":[12.25,2,"S1 S2"],"BA":[5.88,2,"S1 S2"],"H":[0.66,2,"S1 S2"],"isSlot":false,"U":[1.875,1,"S1"],"NW":[3.75,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"404T","generation":"T","isShort":false,"D":[10,2,"S1 S2 S3"],"E":[8,2,"S1 S2"],"twoF":[12.25,2,"S1 S2"],"BA":[6.62,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.875,2,"S1 S4"],"NW":[7.25,1,"S1"],"S":[0.75,2,"S1 S2"]},
    {"frame":"404TS","generation":"T","isShort":true,"D":[10,2,"S1 S2 S3"],"E":[8,2,"S1 S2"],"twoF":[12.25,2,"S1 S2"],"BA":[6.62,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.125,1,"S1"],"NW":[4.25,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"405T","generation":"T","isShort":false,"D":[10,2,"S1 S2 S3"],"E":[8,2,"S1 S2"],"twoF":[13.75,2,"S1 S2"],"BA":[6.62,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.875,1,"S1"],"NW":[7.25,1,"S1"],"S":[0.75,2,"S1 S2"]},
    {"frame":"405TS","generation":"T","isShort":true,"D":[10,2,"S1 S2 S3"],"E":[8,2,"S1 S2"],"twoF":[13.75,2,"S1 S2"],"BA":[6.62,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.125,1,"S1"],"NW":[4.25,1,"S1"],"S":[0.5,2,"S1 S2"]},
    {"frame":"444T","generation":"T","isShort":false,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[14.5,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[3.375,1,"S1"],"NW":[8.5,1,"S1"],"S":[0.875,2,"S1 S2"]},
    {"frame":"444TS","generation":"T","isShort":true,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[14.5,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.375,1,"S1"],"NW":[4.75,1,"S1"],"S":[0.625,2,"S1 S2"]},
    {"frame":"445T","generation":"T","isShort":false,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[16.5,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[3.375,1,"S1"],"NW":[8.5,1,"S1"],"S":[0.875,2,"S1 S2"]},
    {"frame":"445TS","generation":"T","isShort":true,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[16.5,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.375,1,"S1"],"NW":[4.75,1,"S1"],"S":[0.625,2,"S1 S2"]},
    {"frame":"447T","generation":"T","isShort":false,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[20,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[3.375,1,"S1"],"NW":[8.5,1,"S1"],"S":[0.875,2,"S1 S2"]},
    {"frame":"447TS","generation":"T","isShort":true,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[20,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.375,1,"S1"],"NW":[4.75,1,"S1"],"S":[0.625,2,"S1 S2"]},
    {"frame":"449T","generation":"T","isShort":false,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[25,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[3.375,1,"S1"],"NW":[8.5,1,"S1"],"S":[0.875,2,"S1 S2"]},
    {"frame":"449TS","generation":"T","isShort":true,"D":[11,2,"S1 S2 S3"],"E":[9,2,"S1 S2"],"twoF":[25,2,"S1 S2"],"BA":[7.5,2,"S1 S2"],"H":[0.81,2,"S1 S2"],"isSlot":false,"U":[2.375,1,"S1"],"NW":[4.75,1,"S1"],"S":[0.625,2,"S1 S2"]},
    {"frame":"182","generation":"U","isShort":false,"D":[4.5,2,"S2 S3"],"E":[3.75,2,"S2 S3"],"twoF":[4.5,2,"S2 S3"],"BA":[2.75,1,"S3"],"H":[0.41,2,"S2 S3"],"isSlot":false,"U":[0.875,1,"S3"],"NW":[2.25,1,"S3"],"S":[0.188,1,"S3"]},
    {"frame":"184","generation":"U","isShort":false,"D":[4.5,2,"S2 S3"],"E":[3.75,2,"S2 S3"],"twoF":[5.5,2,"S2 S3"],"BA":[2.75,1,"S3"],"H":[0.41,2,"S2 S3"],"isSlot":false,"U":[0.875,1,"S3"],"NW":[2.25,1,"S3"],"S":[0.188,1,"S3"]},
    {"frame":"213","generation":"U","isShort":false,"D":[5.25,2,"S2 S3"],"E":[4.25,2,"S2 S3"],"twoF":[5.5,2,"S2 S3"],"BA":[3.5,2,"S2 S3"],"H":[0.41,2,"S2 S3"],"isSlot":false,"U":[1.125,1,"S3"],"NW":[3,1,"S3"],"S":[0.25,1,"S3"]},
    {"frame":"215","generation":"U","isShort":false,"D":[5.25,2,"S2 S3"],"E":[4.25,2,"S2 S3"],"twoF":[7,2,"S2 S3"],"BA":[3.5,2,"S2 S3"],"H":[0.41,2,"S2 S3"],"isSlot":false,"U":[1.125,1,"S3"],"NW":[3,1,"S3"],"S":[0.25,1,"S3"]},
    {"frame":"254U","generation":"U","isShort":false,"D":[6.25,2,"S2 S3"],"E":[5,1,"S2"],"twoF":[8.25,1,"S2"],"BA":[4.25,1,"S2"],"H":[0.53,1,"S2"],"isSlot":false,"U":[1.375,0,""],"NW":[3.75,0,""],"S":[0.312,0,""]},
    {"frame":"256U","generation":"U","isShort":false,"D":[6.25,2,"S2 S3"],"E":[5,1,"S2"],"twoF":[10,1,"S2"],"BA":[4.25,1,"S2"],"H":[0.53,1,"S2"],"isSlot":false,"U":[1.375,0,""],"NW":[3.75,0,""],"S":[0.312,0,""]},
    {"frame":"284U","generation":"U","isShort":false,"D":[7,2,"S2 S3"],"E":[5.5,1,"S2"],"twoF":[9.5,1,"S2"],"BA":[4.75,1,"S2"],"H":[0.53,1,"S2"],"isSlot":false,"U":[1.625,0,""],"NW":[4.88,0,""],"S":[0.375,0,""]},
    {"frame":"286U","generation":"U","isShort":false,"D":[7,2,"S2 S3"],"E":[5.5,1,"S2"],"twoF":[11,1,"S2"],"BA":[4.75,1,"S2"],"H":[0.53,1,"S2"],"isSlot":false,"U":[1.625,0,""],"NW":[4.88,0,""],"S":[0.375,0,""]},
    {"frame":"324U","generation":"U","isShort":false,"D":[8,2,"S2 S3"],"E":[6.25,1,"S2"],"twoF":[10.5,1,"S2"],"BA":[5.25,1,"S2"],"H":[0.66,1,"S2"],"isSlot":false,"U":[1.875,0,""],"NW":[5.62,0,""],"S":[0.5,0,""]},
    {"frame":"326U","generation":"U","isShort":false,"D":[8,2,"S2 S3"],"E":[6.25,1,"S2"],"twoF":[12,1,"S2"],"BA":[5.25,1,"S2"],"H":[0.66,1,"S2"],"isSlot":false,"U":[1.875,0,""],"NW":[5.62,0,""],"S":[0.5,0,""]},
    {"frame":"364U","generation":"U","isShort":false,"D":[9,2,"S2 S3"],"E":[7,1,"S2"],"twoF":[11.25,1,"S2"],"BA":[5.88,1,"S2"],"H":[0.66,1,"S2"],"isSlot":false,"U":[2.125,0,""],"NW":[6.38,0,""],"S":[0.5,0,""]},
    {"frame":"365U","generation":"U","isShort":false,"D":[9,2,"S2 S3"],"E":[7,1,"S2"],"twoF":[12.25,1,"S2"],"BA":[5.88,1,"S2"],"H":[0.66,1,"S2"],"isSlot":false,"U":[2.125,0,""],"NW":[6.38,0,""],"S":[0.5,0,""]},
    {"frame":"404U","generation":"U","isShort":false,"D":[10,2,"S2 S3"],"E":[8,1,"S2"],"twoF":[12.25,1,"S2"],"BA":[6.62,1,"S2"],"H":[0.81,1,"S2"],"isSlot":false,"U":[2.375,0,""],"NW":[7.12,0,""],"S":[0.625,0,""]},
    {"frame":"405U","generation":"U","isShort":false,"D":[10,2,"S2 S3"],"E":[8,1,"S2"],"twoF":[13.75,1,"S2"],"BA":[6.62,1,"S2"],"H":[0.81,1,"S2"],"isSlot":false,"U":[2.375,0,""],"NW":[7.12,0,""],"S":[0.625,0,""]},
    {"frame":"444U","generation":"U","isShort":false,"D":[11,2,"S2 S3"],"E":[9,1,"S2"],"twoF":[14.5,1,"S2"],"BA":[7.5,1,"S2"],"H":[0.81,1,"S2"],"isSlot":false,"U":[2.875,0,""],"NW":[8.62,0,""],"S":[0.75,0,""]},
    {"frame":"445U","generation":"U","isShort":false,"D":[11,2,"S2 S3"],"E":[9,1,"S2"],"twoF":[16.5,1,"S2"],"BA":[7.5,1,"S2"],"H":[0.81,1,"S2"],"isSlot":false,"U":[2.875,0,""],"NW":[8.62,0,""],"S":[0.75,0,""]},
    {"frame":"324S","generation":"U","isShort":true,"D":[8,0,""],"E":[6.25,0,""],"twoF":[10.5,0,""],"BA":[5.25,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.625,0,""],"NW":[3.25,0,""],"S":[0.375,0,""]},
    {"frame":"326S","generation":"U","isShort":true,"D":[8,0,""],"E":[6.25,0,""],"twoF":[12,0,""],"BA":[5.25,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.625,0,""],"NW":[3.25,0,""],"S":[0.375,0,""]},
    {"frame":"364US","generation":"U","isShort":true,"D":[9,0,""],"E":[7,0,""],"twoF":[11.25,0,""],"BA":[5.88,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.875,0,""],"NW":[3.75,0,""],"S":[0.5,0,""]},
    {"frame":"365US","generation":"U","isShort":true,"D":[9,0,""],"E":[7,0,""],"twoF":[12.25,0,""],"BA":[5.88,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.875,0,""],"NW":[3.75,0,""],"S":[0.5,0,""]},
    {"frame":"404US","generation":"U","isShort":true,"D":[10,0,""],"E":[8,0,""],"twoF":[12.25,0,""],"BA":[6.62,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[4.25,0,""],"S":[0.5,0,""]},
    {"frame":"405US","generation":"U","isShort":true,"D":[10,0,""],"E":[8,0,""],"twoF":[13.75,0,""],"BA":[6.62,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[4.25,0,""],"S":[0.5,0,""]},
    {"frame":"444US","generation":"U","isShort":true,"D":[11,0,""],"E":[9,0,""],"twoF":[14.5,0,""],"BA":[7.5,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[4.25,0,""],"S":[0.5,0,""]},
    {"frame":"445US","generation":"U","isShort":true,"D":[11,0,""],"E":[9,0,""],"twoF":[16.5,0,""],"BA":[7.5,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[4.25,0,""],"S":[0.5,0,""]},
    {"frame":"203","generation":"original","isShort":false,"D":[5,1,"S3"],"E":[4,0,""],"twoF":[5.5,1,"S3"],"BA":[3.12,1,"S3"],"H":[0.41,0,""],"isSlot":false,"U":[0.75,0,""],"NW":[2.25,0,""],"S":[0.188,1,"S3"]},
    {"frame":"204","generation":"original","isShort":false,"D":[5,1,"S3"],"E":[4,0,""],"twoF":[6.5,1,"S3"],"BA":[3.12,1,"S3"],"H":[0.41,0,""],"isSlot":false,"U":[0.75,0,""],"NW":[2.25,0,""],"S":[0.188,1,"S3"]},
    {"frame":"224","generation":"original","isShort":false,"D":[5.5,1,"S3"],"E":[4.5,0,""],"twoF":[6.75,0,""],"BA":[3.5,0,""],"H":[0.41,0,""],"isSlot":false,"U":[1,0,""],"NW":[3,0,""],"S":[0.25,0,""]},
    {"frame":"225","generation":"original","isShort":false,"D":[5.5,1,"S3"],"E":[4.5,0,""],"twoF":[7.5,0,""],"BA":[3.5,0,""],"H":[0.41,0,""],"isSlot":false,"U":[1,0,""],"NW":[3,0,""],"S":[0.25,0,""]},
    {"frame":"254","generation":"original","isShort":false,"D":[6.25,1,"S3"],"E":[5,0,""],"twoF":[8.25,0,""],"BA":[4.25,0,""],"H":[0.53,0,""],"isSlot":false,"U":[1.125,0,""],"NW":[3.38,0,""],"S":[0.25,0,""]},
    {"frame":"284","generation":"original","isShort":false,"D":[7,1,"S3"],"E":[5.5,0,""],"twoF":[9.5,0,""],"BA":[4.75,0,""],"H":[0.53,0,""],"isSlot":false,"U":[1.25,0,""],"NW":[3.75,0,""],"S":[0.25,0,""]},
    {"frame":"324","generation":"original","isShort":false,"D":[8,1,"S3"],"E":[6.25,0,""],"twoF":[10.5,0,""],"BA":[5.25,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.625,0,""],"NW":[4.88,0,""],"S":[0.375,0,""]},
    {"frame":"326","generation":"original","isShort":false,"D":[8,1,"S3"],"E":[6.25,0,""],"twoF":[12,0,""],"BA":[5.25,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.625,0,""],"NW":[4.88,0,""],"S":[0.375,0,""]},
    {"frame":"364","generation":"original","isShort":false,"D":[9,1,"S3"],"E":[7,0,""],"twoF":[11.25,0,""],"BA":[5.88,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.875,0,""],"NW":[5.62,0,""],"S":[0.5,0,""]},
    {"frame":"365","generation":"original","isShort":false,"D":[9,1,"S3"],"E":[7,0,""],"twoF":[12.25,0,""],"BA":[5.88,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.875,0,""],"NW":[5.62,0,""],"S":[0.5,0,""]},
    {"frame":"404","generation":"original","isShort":false,"D":[10,0,""],"E":[8,0,""],"twoF":[12.25,0,""],"BA":[6.62,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[6.38,0,""],"S":[0.5,0,""]},
    {"frame":"405","generation":"original","isShort":false,"D":[10,0,""],"E":[8,0,""],"twoF":[13.75,0,""],"BA":[6.62,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[6.38,0,""],"S":[0.5,0,""]},
    {"frame":"444","generation":"original","isShort":false,"D":[11,0,""],"E":[9,0,""],"twoF":[14.5,0,""],"BA":[7.5,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.375,0,""],"NW":[7.12,0,""],"S":[0.625,0,""]},
    {"frame":"445","generation":"original","isShort":false,"D":[11,0,""],"E":[9,0,""],"twoF":[16.5,0,""],"BA":[7.5,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.375,0,""],"NW":[7.12,0,""],"S":[0.625,0,""]},
    {"frame":"364S","generation":"original","isShort":true,"D":[9,1,"S3"],"E":[7,0,""],"twoF":[11.25,0,""],"BA":[5.88,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.625,0,""],"NW":[3.25,0,""],"S":[0.375,0,""]},
    {"frame":"365S","generation":"original","isShort":true,"D":[9,0,""],"E":[7,0,""],"twoF":[12.25,0,""],"BA":[5.88,0,""],"H":[0.66,0,""],"isSlot":false,"U":[1.625,0,""],"NW":[3.25,0,""],"S":[0.375,0,""]},
    {"frame":"404S","generation":"original","isShort":true,"D":[10,0,""],"E":[8,0,""],"twoF":[12.25,0,""],"BA":[6.62,0,""],"H":[0.81,0,""],"isSlot":false,"U":[1.875,0,""],"NW":[3.75,0,""],"S":[0.5,0,""]},
    {"frame":"405S","generation":"original","isShort":true,"D":[10,0,""],"E":[8,0,""],"twoF":[13.75,0,""],"BA":[6.62,0,""],"H":[0.81,0,""],"isSlot":false,"U":[1.875,0,""],"NW":[3.75,0,""],"S":[0.5,0,""]},
    {"frame":"444S","generation":"original","isShort":true,"D":[11,0,""],"E":[9,0,""],"twoF":[14.5,0,""],"BA":[7.5,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[4.25,0,""],"S":[0.5,0,""]},
    {"frame":"445S","generation":"original","isShort":true,"D":[11,0,""],"E":[9,0,""],"twoF":[16.5,0,""],"BA":[7.5,0,""],"H":[0.81,0,""],"isSlot":false,"U":[2.125,0,""],"NW":[4.25,0,""],"S":[0.5,0,""]},
  ],
  notes: [
    "Two-decimal values are printed as the standard prints them (2.12 stands for 2-1/8). Compare with a tolerance of 0.01."
  ],
};
