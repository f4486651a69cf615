// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IecFlangeOfFrameRow {
  height: number;
  FF: Cell<string>;
  FTStandard?: Cell<string>;
  FTLarger?: Cell<string>;
}

export const iecFlangeOfFrame: Table<IecFlangeOfFrameRow> = {
  source: {
    "standard": "IEC 60072-1:1991 Tables 2 and 3, IEC 60072-1:2022, EN 50347:2001 Tables 4 to 6; old names DIN 42948",
    "edition": "EN 50347:2001",
    "clause": "Tables 4 to 6 (clause numbers from memory)",
    "texts": {
      "C2": "Open parametric parts library citing IEC 60072-1:2022; table of foot, shaft, free-hole flange and tapped-hole flange sizes for frames 63 to 132M (public source file, address not recorded)",
      "C3": "Teaching model of one 4-pole 1.5 kW frame 90L pump motor with free-hole flange, citing IEC 60072-1 and EN 50347 (mounting values, run-out limits) (public source file, address not recorded)",
      "C6": "Open 3D model of a close-coupled pump with a 112M motor; states flange FF215 and the 28 x 60 shaft, citing IEC 60072-1 (public source file, address not recorded)",
      "C8": "Modelling script for a size 250M flange motor after a distributor's standard-motor dimension sheet (public source file, address not recorded (size 250M, 2-pole shaft))",
      "C10": "Motor maker's general catalogue (text copy), two-page dimension table of foot, B5 and B14 motors, sizes 56 to 355L, citing IEC 72-1: H, A, B, C, K, shaft, FF and FT flanges by column (public text copy of the catalogue, maker name withheld)",
      "C12": "Motor maker's catalogue, dimension tables of flange motors to DIN EN 50347, B5 (sizes 56 to 100L read) and B14 (56 to 90L read, 100L in part) (public text copy of the catalogue, maker name withheld)"
    }
  },
  unit: "none",
  columns: {
    "height": "frame number",
    "FF": "flange with free holes",
    "FTStandard": "standard flange with tapped holes",
    "FTLarger": "larger flange with tapped holes, maker practice"
  },
  rows: [
    {"height":56,"FF":["FF100",2,"C10 C12"],"FTStandard":["FT65",2,"C10 C12"],"FTLarger":["FT85",0,""]},
    {"height":63,"FF":["FF115",2,"C2 C10 C12"],"FTStandard":["FT75",2,"C2 C10 C12"],"FTLarger":["FT100",0,""]},
    {"height":71,"FF":["FF130",2,"C2 C10 C12"],"FTStandard":["FT85",2,"C2 C10 C12"],"FTLarger":["FT115",0,""]},
    {"height":80,"FF":["FF165",2,"C2 C10 C12"],"FTStandard":["FT100",2,"C2 C10 C12"],"FTLarger":["FT130",0,""]},
    {"height":90,"FF":["FF165",2,"C2 C3 C10 C12"],"FTStandard":["FT115",2,"C2 C10 C12"],"FTLarger":["FT130",0,""]},
    {"height":100,"FF":["FF215",2,"C2 C10 C12"],"FTStandard":["FT130",2,"C2 C10 C12"],"FTLarger":["FT165",0,""]},
    {"height":112,"FF":["FF215",2,"C2 C6 C10"],"FTStandard":["FT130",2,"C2 C10"],"FTLarger":["FT165",0,""]},
    {"height":132,"FF":["FF265",2,"C2 C10"],"FTStandard":["FT165",2,"C2 C10"],"FTLarger":["FT215",0,""]},
    {"height":160,"FF":["FF300",1,"C10"],"FTStandard":["FT215",1,"C10"],"FTLarger":["FT265",0,""]},
    {"height":180,"FF":["FF300",1,"C10"],"FTLarger":["FT265",0,""]},
    {"height":200,"FF":["FF350",1,"C10"]},
    {"height":225,"FF":["FF400",1,"C10"]},
    {"height":250,"FF":["FF500",2,"C8 C10"]},
    {"height":280,"FF":["FF500",1,"C10"]},
    {"height":315,"FF":["FF600",1,"C10"]},
    {"height":355,"FF":["FF740",1,"C10"]},
    {"height":400,"FF":["FF940",0,""]},
  ],
  notes: [
    "56 FT_larger, 63 FT_larger, 71 FT_larger, 80 FT_larger, 90 FT_larger, 100 FT_larger, 112 FT_larger, 132 FT_larger, 160 FT_larger, 180 FT_larger: maker practice, not fixed per frame by EN 50347 (C9); always check the drawing",
    "355 FF, 400 FF: beyond EN 50347; common maker practice, other sizes occur"
  ],
};
