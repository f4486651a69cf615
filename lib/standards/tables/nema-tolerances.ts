// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface NemaTolerancesRow {
  item: string;
  appliesTo: string;
  limits: Cell<readonly [plus: number, minus: number]>;
  clause: string;
}

export const nemaTolerances: Table<NemaTolerancesRow> = {
  source: {
    "standard": "ANSI/NEMA MG 1-2016, Part 4 (4.4, 4.9, 4.12, 4.13) and Part 18",
    "edition": "MG 1-2016",
    "clause": "4.4.1, 4.9, 4.12, 4.13",
    "texts": {
      "S1": "Open engineering data book of an ANSI-accredited pump-standards institute; transcribes MG 1 clauses 4.4.1, 4.4.4, 4.4.5 and Tables 18-28, 18-30, 18-33, 18-34 with their footnotes (https://github.com/hydraulic-institute/edb (snapshot f1aaddd, files under source/04_piping-materials-IV))",
      "S9": "ANSI/EASA AR100-2020 recommended practice, Table 2-9 (quotes MG 1 4.13, Table 4-6) (public flip-book page)",
      "S10": "Technical note on runout and type P rabbet tolerance by frame range (public technical note)",
      "S18": "Catalogue page with fractional-frame dimensions and a toleranced 56C face and shaft drawing (public flip-book page)"
    }
  },
  unit: "inch",
  columns: {
    "item": "dimension",
    "appliesTo": "frames or sizes",
    "limits": "distances above and below nominal",
    "clause": "clause"
  },
  rows: [
    {"item":"D","appliesTo":"rigid-base foot motors, all frames of the table","limits":[[0,0.06],1,"S1"],"clause":"4.4.1"},
    {"item":"2F","appliesTo":"frames 42 to 56H","limits":[[0.03,0.03],1,"S1"],"clause":"4.4.1"},
    {"item":"2E","appliesTo":"frames 143T to 500","limits":[[0.03,0.03],1,"S1"],"clause":"4.4.1"},
    {"item":"2F","appliesTo":"frames 143T to 500","limits":[[0.03,0.03],1,"S1"],"clause":"4.4.1"},
    {"item":"H (slot width)","appliesTo":"frames 42 to 56H","limits":[[0.02,0],1,"S1"],"clause":"4.4.1"},
    {"item":"H","appliesTo":"frames 143T to 365T","limits":[[0.05,0],1,"S1"],"clause":"4.4.1"},
    {"item":"H","appliesTo":"frames 404T to 449T","limits":[[0.02,0],1,"S1"],"clause":"4.4.1"},
    {"item":"BA","appliesTo":"foot motors of 4.4.1","limits":[[0.09,0.09],1,"S1"],"clause":"4.4.1"},
    {"item":"U","appliesTo":"0.1875 to 1.5000 diameter","limits":[[0,0.0005],1,"S18"],"clause":"4.9.1"},
    {"item":"U","appliesTo":"over 1.5000 to 6.500 diameter","limits":[[0,0.001],0,""],"clause":"4.9.1"},
    {"item":"S (keyseat width)","appliesTo":"0.188 to 0.750","limits":[[0.002,0],1,"S1"],"clause":"4.9.2"},
    {"item":"S (keyseat width)","appliesTo":"over 0.750 to 1.500","limits":[[0.003,0],0,""],"clause":"4.9.2"},
    {"item":"R (bottom of keyseat to opposite side)","appliesTo":"all","limits":[[0,0.015],1,"S1"],"clause":"4.9.3"},
    {"item":"key width (square key stock)","appliesTo":"over 0 to 1.250","limits":[[0,0.002],0,""],"clause":"4.9.8"},
    {"item":"AK, type C face and D flange","appliesTo":"AK under 12","limits":[[0,0.003],1,"S18"],"clause":"4.12"},
    {"item":"AK, type C face and D flange","appliesTo":"AK 12 to 24","limits":[[0,0.005],0,""],"clause":"4.12"},
    {"item":"BB","appliesTo":"42C, 48C, 56C, 143TC, 145TC, 182TCH, 184TCH","limits":[[0,0.06],1,"S1"],"clause":"4.4.4"},
    {"item":"AK, type P base","appliesTo":"AK under 12","limits":[[0.003,0],2,"S9 S10"],"clause":"4.13"},
    {"item":"AK, type P base","appliesTo":"AK 12 to 24","limits":[[0.005,0],2,"S9 S10"],"clause":"4.13"},
    {"item":"AK, type P base","appliesTo":"AK over 24 to 40","limits":[[0.007,0],1,"S9"],"clause":"4.13"},
    {"item":"AK, type P base","appliesTo":"AK over 40 to 60","limits":[[0.01,0],1,"S9"],"clause":"4.13"},
    {"item":"AH, VP","appliesTo":"all","limits":[[0.06,0.06],1,"S1"],"clause":"18-28"},
  ],
  notes: [
    "No tolerance is set for D of resilient-mounted motors."
  ],
};
