// Written by scripts/make-load-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface LowSpeedTorqueRow {
  speedPu: number;
  torquePu: Cell;
}

export const lowSpeedTorque: Table<LowSpeedTorqueRow> = {
  source: {
    "standard": "none: a guidance curve for motors cooled by their own fan; NEMA MG 1 30.2.2.2 and IEC TS 60034-25 show such curves",
    "edition": "undated",
    "clause": "torque at reduced speed, fan-cooled",
    "texts": {}
  },
  unit: "per unit of rated torque",
  columns: {
    "speedPu": "speed, per unit of base speed",
    "torquePu": "continuous torque a fan-cooled motor may give"
  },
  rows: [
    {"speedPu":0.1,"torquePu":[0.45,0,""]},
    {"speedPu":0.25,"torquePu":[0.65,0,""]},
    {"speedPu":0.33,"torquePu":[0.72,0,""]},
    {"speedPu":0.5,"torquePu":[0.85,0,""]},
    {"speedPu":0.75,"torquePu":[0.95,0,""]},
    {"speedPu":1,"torquePu":[1,0,""]},
  ],
  notes: [
    "From memory throughout: for screening only."
  ],
};
