// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

/** Each of the three: at 2, 4, 6 and 8 poles. */
export interface IecTorqueRow {
  kwOver: number;
  kwUpTo: number;
  lockedRotor: readonly (Cell | null)[];
  pullUp: readonly (Cell | null)[];
  breakdown: readonly (Cell | null)[];
}

export const iecTorque: Table<IecTorqueRow> = {
  source: {
    "standard": "IEC 60034-12",
    "edition": "2002 with amendment 2007",
    "clause": "Table 1, design N",
    "texts": {
      "ETB-TQ": "Engineering ToolBox, IEC and NEMA standard torques (IEC Design N beside NEMA Design B, 3-20 hp, 2 and 4 pole)",
      "IEC12-CODE": "Public source file with five power bands of IEC 60034-12 Table 1 Design N minimum torques (address not recorded; partly doubtful)"
    }
  },
  unit: "per unit of rated torque",
  columns: {
    "kwOver": "band of rated power, kW: above",
    "kwUpTo": "up to and including",
    "lockedRotor": "least locked-rotor torque at 2, 4, 6, 8 poles",
    "pullUp": "least pull-up torque at 2, 4, 6, 8 poles",
    "breakdown": "least breakdown torque at 2, 4, 6, 8 poles"
  },
  rows: [
    {"kwOver":0.4,"kwUpTo":0.63,"lockedRotor":[[1.9,1,"IEC12-CODE"],[2,1,"IEC12-CODE"],[1.7,0,""],[1.5,0,""]],"pullUp":[[1.3,1,"IEC12-CODE"],[1.4,1,"IEC12-CODE"],[1.2,0,""],[1.1,0,""]],"breakdown":[[2,1,"IEC12-CODE"],[2,1,"IEC12-CODE"],[1.7,0,""],[1.6,0,""]]},
    {"kwOver":0.63,"kwUpTo":1,"lockedRotor":[[1.8,0,""],[1.9,0,""],[1.7,0,""],[1.5,0,""]],"pullUp":[[1.2,0,""],[1.3,0,""],[1.2,0,""],[1.1,0,""]],"breakdown":[[2,0,""],[2,0,""],[1.8,0,""],[1.7,0,""]]},
    {"kwOver":1,"kwUpTo":1.6,"lockedRotor":[[1.8,0,""],[1.9,0,""],[1.6,0,""],[1.4,0,""]],"pullUp":[[1.2,0,""],[1.3,0,""],[1.1,0,""],[1,0,""]],"breakdown":[[2,0,""],[2,0,""],[1.9,0,""],[1.8,0,""]]},
    {"kwOver":1.6,"kwUpTo":2.5,"lockedRotor":[[1.7,1,"ETB-TQ"],[1.8,1,"ETB-TQ"],[1.6,0,""],[1.4,0,""]],"pullUp":[[1.1,1,"ETB-TQ"],[1.2,1,"ETB-TQ"],[1.1,0,""],[1,0,""]],"breakdown":[[2,1,"ETB-TQ"],[2,1,"ETB-TQ"],[1.9,0,""],[1.8,0,""]]},
    {"kwOver":2.5,"kwUpTo":4,"lockedRotor":[[1.6,1,"ETB-TQ"],[1.7,1,"ETB-TQ"],[1.5,0,""],[1.3,0,""]],"pullUp":[[1.1,1,"ETB-TQ"],[1.2,1,"ETB-TQ"],[1.1,0,""],[1,0,""]],"breakdown":[[2,1,"ETB-TQ"],[2,1,"ETB-TQ"],[1.9,0,""],[1.8,0,""]]},
    {"kwOver":4,"kwUpTo":6.3,"lockedRotor":[[1.5,1,"ETB-TQ"],[1.6,1,"ETB-TQ"],[1.5,0,""],[1.3,0,""]],"pullUp":[[1,1,"ETB-TQ"],[1.1,1,"ETB-TQ"],[1.1,0,""],[1,0,""]],"breakdown":[[2,1,"ETB-TQ"],[2,1,"ETB-TQ"],[1.9,0,""],[1.8,0,""]]},
    {"kwOver":6.3,"kwUpTo":10,"lockedRotor":[[1.5,1,"ETB-TQ"],[1.6,1,"ETB-TQ"],[1.5,0,""],[1.3,0,""]],"pullUp":[[1,1,"ETB-TQ"],[1.1,1,"ETB-TQ"],[1.1,0,""],[1,0,""]],"breakdown":[[2,1,"ETB-TQ"],[2,1,"ETB-TQ"],[1.8,0,""],[1.7,0,""]]},
    {"kwOver":10,"kwUpTo":16,"lockedRotor":[[1.4,1,"ETB-TQ"],[1.5,1,"ETB-TQ"],[1.4,0,""],[1.2,0,""]],"pullUp":[[1,1,"ETB-TQ"],[1.1,1,"ETB-TQ"],[1,0,""],[0.9,0,""]],"breakdown":[[2,1,"ETB-TQ"],[2,1,"ETB-TQ"],[1.8,0,""],[1.7,0,""]]},
    {"kwOver":16,"kwUpTo":25,"lockedRotor":[[1.3,0,""],[1.4,0,""],[1.4,0,""],[1.2,0,""]],"pullUp":[[0.9,0,""],[1,0,""],[1,0,""],[0.9,0,""]],"breakdown":[[1.9,0,""],[1.9,0,""],[1.8,0,""],[1.7,0,""]]},
    {"kwOver":25,"kwUpTo":40,"lockedRotor":[[1.2,0,""],[1.3,0,""],[1.3,0,""],[1.2,0,""]],"pullUp":[[0.9,0,""],[1,0,""],[1,0,""],[0.9,0,""]],"breakdown":[[1.9,0,""],[1.9,0,""],[1.8,0,""],[1.7,0,""]]},
    {"kwOver":40,"kwUpTo":63,"lockedRotor":[[1.1,0,""],[1.2,0,""],[1.2,0,""],[1.1,0,""]],"pullUp":[[0.8,0,""],[0.9,0,""],[0.9,0,""],[0.8,0,""]],"breakdown":[[1.8,0,""],[1.8,0,""],[1.7,0,""],[1.7,0,""]]},
    {"kwOver":63,"kwUpTo":100,"lockedRotor":[[1,1,"IEC12-CODE"],[1.1,0,""],[1.1,0,""],[1,0,""]],"pullUp":[[0.7,1,"IEC12-CODE"],[0.8,0,""],[0.8,0,""],[0.7,0,""]],"breakdown":[[1.8,1,"IEC12-CODE"],[1.8,0,""],[1.7,0,""],[1.6,0,""]]},
    {"kwOver":100,"kwUpTo":160,"lockedRotor":[[0.9,0,""],[1,0,""],[1,0,""],[0.9,0,""]],"pullUp":[[0.7,0,""],[0.8,0,""],[0.8,0,""],[0.7,0,""]],"breakdown":[[1.7,0,""],[1.7,0,""],[1.7,0,""],[1.6,0,""]]},
    {"kwOver":160,"kwUpTo":250,"lockedRotor":[[0.8,0,""],[0.9,0,""],[0.9,0,""],[0.9,0,""]],"pullUp":[[0.6,0,""],[0.7,0,""],[0.7,0,""],[0.7,0,""]],"breakdown":[[1.7,0,""],[1.7,0,""],[1.6,0,""],[1.6,0,""]]},
    {"kwOver":250,"kwUpTo":400,"lockedRotor":[[0.75,1,"IEC12-CODE"],[0.75,1,"IEC12-CODE"],[0.75,1,"IEC12-CODE"],[0.75,1,"IEC12-CODE"]],"pullUp":[[0.6,1,"IEC12-CODE"],[0.6,1,"IEC12-CODE"],[0.6,1,"IEC12-CODE"],[0.6,1,"IEC12-CODE"]],"breakdown":[[1.6,1,"IEC12-CODE"],[1.6,1,"IEC12-CODE"],[1.6,1,"IEC12-CODE"],[1.6,1,"IEC12-CODE"]]},
    {"kwOver":400,"kwUpTo":630,"lockedRotor":[[0.65,0,""],[0.65,0,""],[0.65,0,""],[0.65,0,""]],"pullUp":[[0.5,0,""],[0.5,0,""],[0.5,0,""],[0.5,0,""]],"breakdown":[[1.6,0,""],[1.6,0,""],[1.6,0,""],[1.6,0,""]]},
  ],
  notes: [
    "Edition 2002/2007 bands from memory; five of sixteen bands cross-checked at 2 and 4 pole. One public source file shows larger 6/8-pole values in the lowest band; memory kept. Check the current edition before contractual use."
  ],
};
