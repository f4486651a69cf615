// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** `ratios`: at 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0 and 1.2 of rated load. */
export interface PartLoadEfficiencyRow {
  ratedInputKw: number;
  ratios: readonly Cell[];
}

export const partLoadEfficiency: Table<PartLoadEfficiencyRow> = {
  source: {
    "standard": "none: US Department of Energy Motor Challenge fact sheet, Determining Electric Motor Load and Efficiency",
    "edition": "1996",
    "clause": "Figure 1, digitised in a building-simulation library",
    "texts": {
      "LBNL": "Modelica Buildings Library, function motorEfficiencyCurve: part-load table digitised from the DOE load fact sheet, Figure 1"
    }
  },
  unit: "efficiency over the greatest efficiency of the motor",
  columns: {
    "ratedInputKw": "rated power",
    "ratios": "at 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0, 1.2 of rated load"
  },
  rows: [
    {"ratedInputKw":0.7,"ratios":[[0.32,1,"LBNL"],[0.552,1,"LBNL"],[0.716,1,"LBNL"],[0.817,1,"LBNL"],[0.906,1,"LBNL"],[0.957,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"]]},
    {"ratedInputKw":2.5,"ratios":[[0.33,1,"LBNL"],[0.613,1,"LBNL"],[0.804,1,"LBNL"],[0.923,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"]]},
    {"ratedInputKw":7.5,"ratios":[[0.458,1,"LBNL"],[0.753,1,"LBNL"],[0.887,1,"LBNL"],[0.95,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"]]},
    {"ratedInputKw":15,"ratios":[[0.576,1,"LBNL"],[0.843,1,"LBNL"],[0.937,1,"LBNL"],[0.98,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"]]},
    {"ratedInputKw":35,"ratios":[[0.644,1,"LBNL"],[0.903,1,"LBNL"],[0.957,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"]]},
    {"ratedInputKw":70,"ratios":[[0.724,1,"LBNL"],[0.963,1,"LBNL"],[0.987,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"],[1,1,"LBNL"]]},
  ],
  notes: [],
};
