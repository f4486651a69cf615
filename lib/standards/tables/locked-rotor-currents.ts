// Written by scripts/make-supply-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface LockedRotorCurrentRow {
  hp: number;
  amps: Cell;
}

export const lockedRotorCurrents: Table<LockedRotorCurrentRow> = {
  source: {
    "standard": "NEMA MG 1",
    "edition": "MG 1-2016",
    "clause": "NEMA MG 1-12.35",
    "texts": {
      "EASA-LRC": "EASA Electrical Engineering Handbook, maximum locked-rotor currents, reference NEMA MG 1-12.35 (reprint)",
      "LRC-2": "Technical article listing NEMA MG 1 12.35.1 locked-rotor currents at 230 V and scaled to 200/460/575 V",
      "NEC23": "NFPA 70 (NEC) 2023 Tables 430.7(B), 430.248, 430.250, 430.251(B), transcription in a public repository"
    }
  },
  unit: "A at 230 V, 60 Hz",
  columns: {
    "hp": "rated power",
    "amps": "greatest locked-rotor current of designs B, C and D, three-phase"
  },
  rows: [
    {"hp":0.5,"amps":[20,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":0.75,"amps":[25,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":1,"amps":[30,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":1.5,"amps":[40,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":2,"amps":[50,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":3,"amps":[64,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":5,"amps":[92,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":7.5,"amps":[127,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":10,"amps":[162,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":15,"amps":[232,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":20,"amps":[290,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":25,"amps":[365,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":30,"amps":[435,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":40,"amps":[580,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":50,"amps":[725,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":60,"amps":[870,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":75,"amps":[1085,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":100,"amps":[1450,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":125,"amps":[1815,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":150,"amps":[2170,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":200,"amps":[2900,2,"NEC23 EASA-LRC LRC-2"]},
    {"hp":250,"amps":[3650,2,"EASA-LRC LRC-2"]},
    {"hp":300,"amps":[4400,2,"EASA-LRC LRC-2"]},
    {"hp":350,"amps":[5100,2,"EASA-LRC LRC-2"]},
    {"hp":400,"amps":[5800,2,"EASA-LRC LRC-2"]},
    {"hp":450,"amps":[6500,2,"EASA-LRC LRC-2"]},
    {"hp":500,"amps":[7250,2,"EASA-LRC LRC-2"]},
  ],
  notes: [
    "At other rated voltages the current is inversely proportional to the voltage (read in one text)."
  ],
};
