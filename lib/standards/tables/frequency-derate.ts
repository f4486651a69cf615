// Written by scripts/make-supply-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface FrequencyDerateRow {
  enclosure: 'open' | 'closed';
  volts60: number;
  volts50: number;
  share: Cell;
}

export const frequencyDerates: Table<FrequencyDerateRow> = {
  source: {
    "standard": "An application note on 60 Hz motors on 50 Hz supplies",
    "edition": "undated",
    "clause": "derating table for 60 Hz motors on 50 Hz",
    "texts": {
      "F50-60": "Application note, operating 60 Hz motors on 50 Hz supplies (derate table and two examples; maker name withheld)"
    }
  },
  unit: "share of the 60 Hz output",
  columns: {
    "enclosure": "open: drip-proof; closed: totally enclosed, fan-cooled",
    "volts60": "plate volts at 60 Hz",
    "volts50": "supply volts at 50 Hz",
    "share": "output left, with a service factor of 1.0"
  },
  rows: [
    {"enclosure":"open","volts60":230,"volts50":190,"share":[0.85,1,"F50-60"]},
    {"enclosure":"open","volts60":230,"volts50":200,"share":[0.8,1,"F50-60"]},
    {"enclosure":"open","volts60":230,"volts50":208,"share":[0.75,1,"F50-60"]},
    {"enclosure":"open","volts60":460,"volts50":380,"share":[0.85,1,"F50-60"]},
    {"enclosure":"open","volts60":460,"volts50":400,"share":[0.8,1,"F50-60"]},
    {"enclosure":"open","volts60":460,"volts50":415,"share":[0.75,1,"F50-60"]},
    {"enclosure":"open","volts60":575,"volts50":475,"share":[0.85,1,"F50-60"]},
    {"enclosure":"open","volts60":575,"volts50":500,"share":[0.8,1,"F50-60"]},
    {"enclosure":"open","volts60":575,"volts50":520,"share":[0.75,1,"F50-60"]},
    {"enclosure":"closed","volts60":230,"volts50":190,"share":[0.8,1,"F50-60"]},
    {"enclosure":"closed","volts60":230,"volts50":200,"share":[0.75,1,"F50-60"]},
    {"enclosure":"closed","volts60":230,"volts50":208,"share":[0.7,1,"F50-60"]},
    {"enclosure":"closed","volts60":460,"volts50":380,"share":[0.8,1,"F50-60"]},
    {"enclosure":"closed","volts60":460,"volts50":400,"share":[0.75,1,"F50-60"]},
    {"enclosure":"closed","volts60":460,"volts50":415,"share":[0.7,1,"F50-60"]},
    {"enclosure":"closed","volts60":575,"volts50":475,"share":[0.8,1,"F50-60"]},
    {"enclosure":"closed","volts60":575,"volts50":500,"share":[0.75,1,"F50-60"]},
    {"enclosure":"closed","volts60":575,"volts50":520,"share":[0.7,1,"F50-60"]},
  ],
  notes: [
    "Direct on line, 2, 4 and 6 poles, supply within 5 per cent. A guideline of one text, not a standard.",
    "Another text line limits the output to five sixths of the 60 Hz plate."
  ],
};
