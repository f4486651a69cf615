// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** A horsepower and the kW the trade stamps for it. */
export interface CustomaryPairRow {
  hp: number;
  kw: Cell;
}

export const customaryPairs: Table<CustomaryPairRow> = {
  source: {
    "standard": "10 CFR 431.25 and 431.446",
    "edition": "2006 and later",
    "clause": "horsepower and standard kilowatt equivalent",
    "texts": {
      "CFR431-2006": "10 CFR 431.25(a), CFR revised 1 Jan 2006 (U.S. GPO copy, first rows) and full table in a reprint (laws9.com) - EPAct / energy-efficient level",
      "CFR431-T1": "10 CFR 431.25(a), Table 1 (general purpose subtype I, 1-200 hp, from 19 Dec 2010), research copy of the CFR text (self-law.org, public page)",
      "CFR446": "10 CFR 431.446(a), small electric motors, polyphase open table (Markdown copy of the eCFR, public repository)",
      "WAC": "Washington Administrative Code 51-11C-40508, Table C405.8(1) (efficiency as of 1 June 2016), rows 1-25 hp read"
    }
  },
  unit: "kW",
  columns: {
    "hp": "rated horsepower",
    "kw": "its standard kilowatt equivalent"
  },
  rows: [
    {"hp":0.25,"kw":[0.18,1,"CFR446"]},
    {"hp":0.33,"kw":[0.25,1,"CFR446"]},
    {"hp":0.5,"kw":[0.37,1,"CFR446"]},
    {"hp":0.75,"kw":[0.55,1,"CFR446"]},
    {"hp":1,"kw":[0.75,2,"CFR431-2006 WAC"]},
    {"hp":1.5,"kw":[1.1,2,"CFR431-2006 WAC"]},
    {"hp":2,"kw":[1.5,2,"CFR431-2006 WAC"]},
    {"hp":3,"kw":[2.2,2,"CFR431-2006 WAC"]},
    {"hp":5,"kw":[3.7,2,"CFR431-2006 WAC"]},
    {"hp":7.5,"kw":[5.5,2,"CFR431-2006 WAC"]},
    {"hp":10,"kw":[7.5,2,"CFR431-2006 WAC"]},
    {"hp":15,"kw":[11,2,"CFR431-2006 WAC"]},
    {"hp":20,"kw":[15,2,"CFR431-2006 WAC"]},
    {"hp":25,"kw":[18.5,2,"CFR431-2006 WAC"]},
    {"hp":30,"kw":[22,2,"CFR431-2006 CFR431-T1"]},
    {"hp":40,"kw":[30,2,"CFR431-2006 CFR431-T1"]},
    {"hp":50,"kw":[37,2,"CFR431-2006 CFR431-T1"]},
    {"hp":60,"kw":[45,2,"CFR431-2006 CFR431-T1"]},
    {"hp":75,"kw":[55,2,"CFR431-2006 CFR431-T1"]},
    {"hp":100,"kw":[75,2,"CFR431-2006 CFR431-T1"]},
    {"hp":125,"kw":[90,2,"CFR431-2006 CFR431-T1"]},
    {"hp":150,"kw":[110,2,"CFR431-2006 CFR431-T1"]},
    {"hp":200,"kw":[150,2,"CFR431-2006 CFR431-T1"]},
    {"hp":250,"kw":[186,0,""]},
    {"hp":300,"kw":[224,0,""]},
    {"hp":350,"kw":[261,0,""]},
    {"hp":400,"kw":[298,0,""]},
    {"hp":450,"kw":[336,0,""]},
    {"hp":500,"kw":[373,0,""]},
  ],
  notes: [
    "0.33 stands for a third of a horsepower."
  ],
};
