// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IecFlangesRow {
  flange: string;
  kind: 'FF' | 'FT';
  M: Cell;
  N: Cell;
  P: Cell;
  S: Cell<number | string>;
  holes: Cell;
  R: Cell;
  oldName?: string;
}

export const iecFlanges: Table<IecFlangesRow> = {
  source: {
    "standard": "IEC 60072-1:1991 Tables 2 and 3, IEC 60072-1:2022, EN 50347:2001 Tables 4 to 6; old names DIN 42948",
    "edition": "IEC 60072-1:1991 and 2022, EN 50347:2001",
    "clause": "IEC 60072-1 Tables 2 and 3, EN 50347 Tables 4 to 6 (clause numbers from memory)",
    "texts": {
      "C2": "Open parametric parts library citing IEC 60072-1:2022; table of foot, shaft, free-hole flange and tapped-hole flange sizes for frames 63 to 132M (public source file, address not recorded)",
      "C3": "Teaching model of one 4-pole 1.5 kW frame 90L pump motor with free-hole flange, citing IEC 60072-1 and EN 50347 (mounting values, run-out limits) (public source file, address not recorded)",
      "C6": "Open 3D model of a close-coupled pump with a 112M motor; states flange FF215 and the 28 x 60 shaft, citing IEC 60072-1 (public source file, address not recorded)",
      "C8": "Modelling script for a size 250M flange motor after a distributor's standard-motor dimension sheet (public source file, address not recorded (size 250M, 2-pole shaft))",
      "C10": "Motor maker's general catalogue (text copy), two-page dimension table of foot, B5 and B14 motors, sizes 56 to 355L, citing IEC 72-1: H, A, B, C, K, shaft, FF and FT flanges by column (public text copy of the catalogue, maker name withheld)",
      "C12": "Motor maker's catalogue, dimension tables of flange motors to DIN EN 50347, B5 (sizes 56 to 100L read) and B14 (56 to 90L read, 100L in part) (public text copy of the catalogue, maker name withheld)"
    }
  },
  unit: "mm",
  columns: {
    "flange": "flange; the number is M",
    "kind": "FF free holes, FT tapped holes",
    "M": "bolt circle diameter",
    "N": "spigot diameter",
    "P": "outside diameter",
    "S": "hole diameter (FF) or thread (FT)",
    "holes": "number of holes",
    "R": "shaft shoulder to flange face",
    "oldName": "name in DIN 42948, from memory"
  },
  rows: [
    {"flange":"FF55","kind":"FF","M":[55,0,""],"N":[40,0,""],"P":[70,0,""],"S":[5.8,0,""],"holes":[4,0,""],"R":[0,0,""]},
    {"flange":"FF65","kind":"FF","M":[65,0,""],"N":[50,0,""],"P":[80,0,""],"S":[5.8,0,""],"holes":[4,0,""],"R":[0,0,""]},
    {"flange":"FF75","kind":"FF","M":[75,0,""],"N":[60,0,""],"P":[90,0,""],"S":[5.8,0,""],"holes":[4,0,""],"R":[0,0,""]},
    {"flange":"FF85","kind":"FF","M":[85,0,""],"N":[70,0,""],"P":[105,0,""],"S":[7,0,""],"holes":[4,0,""],"R":[0,0,""]},
    {"flange":"FF100","kind":"FF","M":[100,2,"C10 C12"],"N":[80,2,"C10 C12"],"P":[120,2,"C10 C12"],"S":[7,2,"C10 C12"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A120"},
    {"flange":"FF115","kind":"FF","M":[115,2,"C2 C10 C12"],"N":[95,2,"C2 C10 C12"],"P":[140,2,"C2 C10 C12"],"S":[10,2,"C2 C10"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A140"},
    {"flange":"FF130","kind":"FF","M":[130,2,"C2 C10 C12"],"N":[110,2,"C2 C10 C12"],"P":[160,2,"C2 C10 C12"],"S":[10,2,"C2 C10"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A160"},
    {"flange":"FF165","kind":"FF","M":[165,2,"C2 C3 C10 C12"],"N":[130,2,"C2 C3 C10 C12"],"P":[200,2,"C2 C3 C10 C12"],"S":[12,2,"C2 C3 C10"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A200"},
    {"flange":"FF215","kind":"FF","M":[215,2,"C2 C6 C10 C12"],"N":[180,2,"C2 C6 C10 C12"],"P":[250,2,"C2 C6 C10 C12"],"S":[14.5,0,""],"holes":[4,1,"C6"],"R":[0,1,"C10"],"oldName":"A250"},
    {"flange":"FF265","kind":"FF","M":[265,2,"C2 C10"],"N":[230,2,"C2 C10"],"P":[300,2,"C2 C10"],"S":[14.5,0,""],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A300"},
    {"flange":"FF300","kind":"FF","M":[300,1,"C10"],"N":[250,1,"C10"],"P":[350,1,"C10"],"S":[18.5,0,""],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A350"},
    {"flange":"FF350","kind":"FF","M":[350,1,"C10"],"N":[300,1,"C10"],"P":[400,1,"C10"],"S":[18.5,0,""],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"A400"},
    {"flange":"FF400","kind":"FF","M":[400,1,"C10"],"N":[350,1,"C10"],"P":[450,1,"C10"],"S":[18.5,0,""],"holes":[8,0,""],"R":[0,1,"C10"],"oldName":"A450"},
    {"flange":"FF500","kind":"FF","M":[500,1,"C10"],"N":[450,2,"C8 C10"],"P":[550,2,"C8 C10"],"S":[18.5,0,""],"holes":[8,1,"C8"],"R":[0,1,"C10"],"oldName":"A550"},
    {"flange":"FF600","kind":"FF","M":[600,1,"C10"],"N":[550,1,"C10"],"P":[660,1,"C10"],"S":[24,1,"C10"],"holes":[8,0,""],"R":[0,1,"C10"],"oldName":"A660"},
    {"flange":"FF740","kind":"FF","M":[740,1,"C10"],"N":[680,1,"C10"],"P":[800,1,"C10"],"S":[24,1,"C10"],"holes":[8,0,""],"R":[0,1,"C10"],"oldName":"A800"},
    {"flange":"FF940","kind":"FF","M":[940,0,""],"N":[880,0,""],"P":[1000,0,""],"S":[28,0,""],"holes":[8,0,""],"R":[0,0,""],"oldName":"A1000"},
    {"flange":"FF1080","kind":"FF","M":[1080,0,""],"N":[1000,0,""],"P":[1150,0,""],"S":[28,0,""],"holes":[8,0,""],"R":[0,0,""],"oldName":"A1150"},
    {"flange":"FT55","kind":"FT","M":[55,0,""],"N":[40,0,""],"P":[70,0,""],"S":["M5",0,""],"holes":[4,0,""],"R":[0,0,""],"oldName":"C70"},
    {"flange":"FT65","kind":"FT","M":[65,2,"C10 C12"],"N":[50,2,"C10 C12"],"P":[80,2,"C10 C12"],"S":["M5",2,"C10 C12"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C80"},
    {"flange":"FT75","kind":"FT","M":[75,2,"C2 C10 C12"],"N":[60,2,"C2 C10 C12"],"P":[90,2,"C2 C10 C12"],"S":["M5",2,"C2 C10 C12"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C90"},
    {"flange":"FT85","kind":"FT","M":[85,2,"C2 C10 C12"],"N":[70,2,"C2 C10 C12"],"P":[105,2,"C2 C10 C12"],"S":["M6",2,"C2 C10 C12"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C105"},
    {"flange":"FT100","kind":"FT","M":[100,2,"C2 C10 C12"],"N":[80,2,"C2 C10 C12"],"P":[120,2,"C2 C10 C12"],"S":["M6",2,"C2 C10 C12"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C120"},
    {"flange":"FT115","kind":"FT","M":[115,2,"C2 C10 C12"],"N":[95,2,"C2 C10 C12"],"P":[140,2,"C2 C10 C12"],"S":["M8",2,"C2 C10 C12"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C140"},
    {"flange":"FT130","kind":"FT","M":[130,2,"C2 C10 C12"],"N":[110,2,"C2 C10 C12"],"P":[160,2,"C2 C10 C12"],"S":["M8",2,"C2 C10"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C160"},
    {"flange":"FT165","kind":"FT","M":[165,2,"C2 C10"],"N":[130,2,"C2 C10"],"P":[200,2,"C2 C10"],"S":["M10",2,"C2 C10"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C200"},
    {"flange":"FT215","kind":"FT","M":[215,1,"C10"],"N":[180,1,"C10"],"P":[250,1,"C10"],"S":["M12",1,"C10"],"holes":[4,0,""],"R":[0,1,"C10"],"oldName":"C250"},
    {"flange":"FT265","kind":"FT","M":[265,0,""],"N":[230,0,""],"P":[300,0,""],"S":["M12",0,""],"holes":[4,0,""],"R":[0,0,""],"oldName":"C300"},
    {"flange":"FT300","kind":"FT","M":[300,0,""],"N":[250,0,""],"P":[350,0,""],"S":["M16",0,""],"holes":[4,0,""],"R":[0,0,""],"oldName":"C350"},
  ],
  notes: [
    "EN 50347 fixes for each frame the FF flange and the standard FT flange up to frame 160; it does not fix the larger FT flange per frame, though its sizes are those of IEC 60072-1.",
    "FF and FT with the same number share M, N and P; they differ in the holes (free against tapped), so a bolt enters from the motor side on FF and from the machine side on FT.",
    "FF flanges up to M 350 have four holes; from M 400 up eight.",
    "Holes lie off the vertical axis: 45 degrees with four holes, 22.5 degrees with eight, so the motor can be turned by a whole hole step only.",
    "On a foot-and-flange motor the flange reaches below the feet plane when P/2 is larger than H (frame 90 with FF165: 100 against 90), so the seat needs a step or a free edge at the drive end.",
    "FF115 S, FF130 S: C12 prints 9.5",
    "FF165 S: C12 prints 11.5",
    "FF215 S: C2 rounds this to 15; C6 draws 14; maker sheets usually 14.5 or 15; C10 prints 15; C12 prints 14",
    "FF265 S: C2 rounds this to 15; C6 draws 14; maker sheets usually 14.5 or 15; C10 prints 15",
    "FF300 S, FF350 S, FF400 S: C10 prints 19",
    "FF500 S: C8 draws its screws with 16 (bolt size, not hole); C10 prints 19"
  ],
};
