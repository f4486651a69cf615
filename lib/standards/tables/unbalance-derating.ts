// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface UnbalanceDeratingRow {
  unbalancePct: number;
  factor: Cell;
}

export const unbalanceDerating: Table<UnbalanceDeratingRow> = {
  source: {
    "standard": "NEMA MG 1",
    "edition": "MG 1-2016",
    "clause": "MG 1-14.36.2, Figure 14-1",
    "texts": {
      "ETB-UNB": "Engineering ToolBox, voltage imbalance derating factor of polyphase motors (and supply limits)",
      "UNB-3": "Web explanation of the NEMA imbalance method with a 460/467/450 V example"
    }
  },
  unit: "multiplier of rated output",
  columns: {
    "unbalancePct": "greatest deviation from the mean of the three line voltages, per cent of the mean",
    "factor": "read off the drawn curve"
  },
  rows: [
    {"unbalancePct":0,"factor":[1,1,"ETB-UNB"]},
    {"unbalancePct":0.5,"factor":[1,1,"ETB-UNB"]},
    {"unbalancePct":1.5,"factor":[0.97,1,"ETB-UNB"]},
    {"unbalancePct":2,"factor":[0.95,2,"ETB-UNB UNB-3"]},
    {"unbalancePct":2.5,"factor":[0.93,1,"ETB-UNB"]},
    {"unbalancePct":3,"factor":[0.89,1,"ETB-UNB"]},
    {"unbalancePct":3.5,"factor":[0.85,1,"ETB-UNB"]},
    {"unbalancePct":4,"factor":[0.82,1,"ETB-UNB"]},
    {"unbalancePct":4.5,"factor":[0.78,1,"ETB-UNB"]},
    {"unbalancePct":5,"factor":[0.76,1,"ETB-UNB"]},
  ],
  notes: [
    "The standard gives a drawn curve (MG 1 Figure 14-1), so readings differ by about 0.01-0.02; test with a tolerance of 0.02."
  ],
};
