// Written by scripts/make-supply-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface CodeLetterRow {
  letter: string;
  from: Cell;
  /** Null: open at the top. */
  to: Cell | null;
}

export const codeLetters: Table<CodeLetterRow> = {
  source: {
    "standard": "NFPA 70 (NEC)",
    "edition": "2023",
    "clause": "NEC Table 430.7(B)",
    "texts": {
      "CODE2": "Web table of locked-rotor code letters (kVA/hp), NEMA MG 1 (second rendering)",
      "NEC23": "NFPA 70 (NEC) 2023 Tables 430.7(B), 430.248, 430.250, 430.251(B), transcription in a public repository"
    }
  },
  unit: "kVA per hp with locked rotor",
  columns: {
    "letter": "code letter on the plate",
    "from": "lower end of the band",
    "to": "upper end of the band"
  },
  rows: [
    {"letter":"A","from":[0,2,"NEC23 CODE2"],"to":[3.14,2,"NEC23 CODE2"]},
    {"letter":"B","from":[3.15,2,"NEC23 CODE2"],"to":[3.54,2,"NEC23 CODE2"]},
    {"letter":"C","from":[3.55,2,"NEC23 CODE2"],"to":[3.99,2,"NEC23 CODE2"]},
    {"letter":"D","from":[4,2,"NEC23 CODE2"],"to":[4.49,2,"NEC23 CODE2"]},
    {"letter":"E","from":[4.5,2,"NEC23 CODE2"],"to":[4.99,2,"NEC23 CODE2"]},
    {"letter":"F","from":[5,2,"NEC23 CODE2"],"to":[5.59,2,"NEC23 CODE2"]},
    {"letter":"G","from":[5.6,2,"NEC23 CODE2"],"to":[6.29,2,"NEC23 CODE2"]},
    {"letter":"H","from":[6.3,2,"NEC23 CODE2"],"to":[7.09,2,"NEC23 CODE2"]},
    {"letter":"J","from":[7.1,2,"NEC23 CODE2"],"to":[7.99,2,"NEC23 CODE2"]},
    {"letter":"K","from":[8,2,"NEC23 CODE2"],"to":[8.99,2,"NEC23 CODE2"]},
    {"letter":"L","from":[9,2,"NEC23 CODE2"],"to":[9.99,2,"NEC23 CODE2"]},
    {"letter":"M","from":[10,2,"NEC23 CODE2"],"to":[11.19,2,"NEC23 CODE2"]},
    {"letter":"N","from":[11.2,2,"NEC23 CODE2"],"to":[12.49,2,"NEC23 CODE2"]},
    {"letter":"P","from":[12.5,2,"NEC23 CODE2"],"to":[13.99,2,"NEC23 CODE2"]},
    {"letter":"R","from":[14,2,"NEC23 CODE2"],"to":[15.99,2,"NEC23 CODE2"]},
    {"letter":"S","from":[16,2,"NEC23 CODE2"],"to":[17.99,2,"NEC23 CODE2"]},
    {"letter":"T","from":[18,2,"NEC23 CODE2"],"to":[19.99,2,"NEC23 CODE2"]},
    {"letter":"U","from":[20,2,"NEC23 CODE2"],"to":[22.39,2,"NEC23 CODE2"]},
    {"letter":"V","from":[22.4,2,"NEC23 CODE2"],"to":null},
  ],
  notes: [
    "Each band runs up to, not including, the next letter floor (e.g. G is 5.6 <= x < 6.3) (from memory)."
  ],
};
