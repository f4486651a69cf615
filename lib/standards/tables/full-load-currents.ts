// Written by scripts/make-supply-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** `amps`: at 115, 200, 208, 230, 460, 575 and 2300 V; null where nothing is printed. */
export interface FullLoadCurrentRow {
  phases: 1 | 3;
  hp: number;
  amps: readonly (Cell | null)[];
}

export const fullLoadCurrents: Table<FullLoadCurrentRow> = {
  source: {
    "standard": "NFPA 70 (NEC)",
    "edition": "2023",
    "clause": "NEC Tables 430.248 and 430.250",
    "texts": {
      "NEC08": "NEC 2008 Table 430.250, reprinted page (scribd 250218196)",
      "NEC23": "NFPA 70 (NEC) 2023 Tables 430.7(B), 430.248, 430.250, 430.251(B), transcription in a public repository",
      "SPK": "NEC Tables 430.248 / 430.250 as reprinted at sparky-hq.com",
      "WSC": "NEC Table 430.250 as reprinted at wiresizecalculator.net"
    }
  },
  unit: "A",
  columns: {
    "phases": "1: Table 430.248; 3: Table 430.250, induction type",
    "hp": "rated power",
    "amps": "table current at rated motor volts of 115, 200, 208, 230, 460, 575, 2300"
  },
  rows: [
    {"phases":1,"hp":0.1667,"amps":[[4.4,2,"NEC23 SPK"],[2.5,2,"NEC23 SPK"],[2.4,2,"NEC23 SPK"],[2.2,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":0.25,"amps":[[5.8,2,"NEC23 SPK"],[3.3,2,"NEC23 SPK"],[3.2,2,"NEC23 SPK"],[2.9,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":0.3333,"amps":[[7.2,2,"NEC23 SPK"],[4.1,2,"NEC23 SPK"],[4,2,"NEC23 SPK"],[3.6,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":0.5,"amps":[[9.8,2,"NEC23 SPK"],[5.6,2,"NEC23 SPK"],[5.4,2,"NEC23 SPK"],[4.9,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":0.75,"amps":[[13.8,2,"NEC23 SPK"],[7.9,2,"NEC23 SPK"],[7.6,2,"NEC23 SPK"],[6.9,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":1,"amps":[[16,2,"NEC23 SPK"],[9.2,2,"NEC23 SPK"],[8.8,2,"NEC23 SPK"],[8,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":1.5,"amps":[[20,2,"NEC23 SPK"],[11.5,2,"NEC23 SPK"],[11,2,"NEC23 SPK"],[10,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":2,"amps":[[24,2,"NEC23 SPK"],[13.8,2,"NEC23 SPK"],[13.2,2,"NEC23 SPK"],[12,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":3,"amps":[[34,2,"NEC23 SPK"],[19.6,2,"NEC23 SPK"],[18.7,2,"NEC23 SPK"],[17,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":5,"amps":[[56,2,"NEC23 SPK"],[32.2,2,"NEC23 SPK"],[30.8,2,"NEC23 SPK"],[28,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":7.5,"amps":[[80,2,"NEC23 SPK"],[46,2,"NEC23 SPK"],[44,2,"NEC23 SPK"],[40,2,"NEC23 SPK"],null,null,null]},
    {"phases":1,"hp":10,"amps":[[100,2,"NEC23 SPK"],[57.5,2,"NEC23 SPK"],[55,2,"NEC23 SPK"],[50,2,"NEC23 SPK"],null,null,null]},
    {"phases":3,"hp":0.5,"amps":[[4.4,2,"NEC23 NEC08 WSC"],[2.5,2,"NEC23 NEC08"],[2.4,2,"NEC23 NEC08"],[2.2,2,"NEC23 NEC08"],[1.1,2,"NEC23 NEC08"],[0.9,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":0.75,"amps":[[6.4,2,"NEC23 NEC08 WSC"],[3.7,2,"NEC23 NEC08"],[3.5,2,"NEC23 NEC08"],[3.2,2,"NEC23 NEC08"],[1.6,2,"NEC23 NEC08"],[1.3,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":1,"amps":[[8.4,2,"NEC23 NEC08 WSC"],[4.8,2,"NEC23 NEC08"],[4.6,2,"NEC23 NEC08"],[4.2,2,"NEC23 NEC08"],[2.1,2,"NEC23 NEC08"],[1.7,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":1.5,"amps":[[12,2,"NEC23 NEC08 WSC"],[6.9,2,"NEC23 NEC08"],[6.6,2,"NEC23 NEC08"],[6,2,"NEC23 NEC08"],[3,2,"NEC23 NEC08"],[2.4,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":2,"amps":[[13.6,2,"NEC23 NEC08 WSC"],[7.8,2,"NEC23 NEC08"],[7.5,2,"NEC23 NEC08"],[6.8,2,"NEC23 NEC08"],[3.4,2,"NEC23 NEC08"],[2.7,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":3,"amps":[null,[11,2,"NEC23 NEC08"],[10.6,2,"NEC23 NEC08"],[9.6,2,"NEC23 NEC08"],[4.8,2,"NEC23 NEC08"],[3.9,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":5,"amps":[null,[17.5,2,"NEC23 NEC08"],[16.7,2,"NEC23 NEC08"],[15.2,2,"NEC23 NEC08"],[7.6,2,"NEC23 NEC08"],[6.1,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":7.5,"amps":[null,[25.3,2,"NEC23 NEC08"],[24.2,2,"NEC23 NEC08"],[22,2,"NEC23 NEC08"],[11,2,"NEC23 NEC08"],[9,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":10,"amps":[null,[32.2,2,"NEC23 NEC08"],[30.8,2,"NEC23 NEC08"],[28,2,"NEC23 NEC08"],[14,2,"NEC23 NEC08"],[11,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":15,"amps":[null,[48.3,2,"NEC23 NEC08"],[46.2,2,"NEC23 NEC08"],[42,2,"NEC23 NEC08"],[21,2,"NEC23 NEC08"],[17,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":20,"amps":[null,[62.1,2,"NEC23 NEC08"],[59.4,2,"NEC23 NEC08"],[54,2,"NEC23 NEC08"],[27,2,"NEC23 NEC08"],[22,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":25,"amps":[null,[78.2,2,"NEC23 NEC08"],[74.8,2,"NEC23 NEC08"],[68,2,"NEC23 NEC08"],[34,2,"NEC23 NEC08"],[27,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":30,"amps":[null,[92,2,"NEC23 NEC08"],[88,2,"NEC23 NEC08"],[80,2,"NEC23 NEC08"],[40,2,"NEC23 NEC08"],[32,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":40,"amps":[null,[120,2,"NEC23 NEC08"],[114,2,"NEC23 NEC08"],[104,2,"NEC23 NEC08"],[52,2,"NEC23 NEC08"],[41,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":50,"amps":[null,[150,2,"NEC23 NEC08"],[143,2,"NEC23 NEC08"],[130,2,"NEC23 NEC08"],[65,2,"NEC23 NEC08"],[52,2,"NEC23 NEC08"],null]},
    {"phases":3,"hp":60,"amps":[null,[177,2,"NEC23 NEC08"],[169,2,"NEC23 NEC08"],[154,2,"NEC23 NEC08"],[77,2,"NEC23 NEC08"],[62,2,"NEC23 NEC08"],[16,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":75,"amps":[null,[221,2,"NEC23 NEC08"],[211,2,"NEC23 NEC08"],[192,2,"NEC23 NEC08"],[96,2,"NEC23 NEC08"],[77,2,"NEC23 NEC08"],[20,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":100,"amps":[null,[285,2,"NEC23 NEC08"],[273,2,"NEC23 NEC08"],[248,2,"NEC23 NEC08"],[124,2,"NEC23 NEC08"],[99,2,"NEC23 NEC08"],[26,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":125,"amps":[null,[359,2,"NEC23 NEC08"],[343,2,"NEC23 NEC08"],[312,2,"NEC23 NEC08"],[156,2,"NEC23 NEC08"],[125,2,"NEC23 NEC08"],[31,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":150,"amps":[null,[414,2,"NEC23 NEC08"],[396,2,"NEC23 NEC08"],[360,2,"NEC23 NEC08"],[180,2,"NEC23 NEC08"],[144,2,"NEC23 NEC08"],[37,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":200,"amps":[null,[552,2,"NEC23 NEC08"],[528,2,"NEC23 NEC08"],[480,2,"NEC23 NEC08"],[240,2,"NEC23 NEC08"],[192,2,"NEC23 NEC08"],[49,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":250,"amps":[null,null,null,null,[302,2,"NEC23 NEC08"],[242,2,"NEC23 NEC08"],[60,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":300,"amps":[null,null,null,null,[361,2,"NEC23 NEC08"],[289,2,"NEC23 NEC08"],[72,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":350,"amps":[null,null,null,null,[414,2,"NEC23 NEC08"],[336,2,"NEC23 NEC08"],[83,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":400,"amps":[null,null,null,null,[477,2,"NEC23 NEC08"],[382,2,"NEC23 NEC08"],[95,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":450,"amps":[null,null,null,null,[515,2,"NEC23 NEC08"],[412,2,"NEC23 NEC08"],[103,2,"NEC23 NEC08"]]},
    {"phases":3,"hp":500,"amps":[null,null,null,null,[590,2,"NEC23 NEC08"],[472,2,"NEC23 NEC08"],[118,2,"NEC23 NEC08"]]},
  ],
  notes: [
    "Currents for sizing a circuit, usually above the plate of a modern motor: never evidence of what a motor draws."
  ],
};
