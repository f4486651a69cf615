// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IecFootFramesRow {
  frame: string;
  height: number;
  length: 'S' | 'M' | 'L' | null;
  isUsual: boolean;
  H: Cell;
  A: Cell;
  B: Cell;
  C: Cell;
  K: Cell;
  shafts: readonly { poles: 'all' | '2' | '4 and more'; D: Cell; E: Cell; F: Cell; fit: Cell<string> }[];
}

export const iecFootFrames: Table<IecFootFramesRow> = {
  source: {
    "standard": "IEC 60072-1:1991 Tables 1 and 4, IEC 60072-1:2022, EN 50347:2001 Tables 1 to 3",
    "edition": "IEC 60072-1:1991 and 2022, EN 50347:2001",
    "clause": "IEC 60072-1 Tables 1 and 4, EN 50347 Tables 1 to 3 (clause numbers from memory)",
    "texts": {
      "C1": "Open 3D-scene parts kit: a JSON table transcribing the foot-mounted 4-pole dimension sheets of three motor makers (A, B, C), page by page, with a note wherever the makers differ; frames 63 to 225S and a kW-to-frame list (public source file, address not recorded)",
      "C2": "Open parametric parts library citing IEC 60072-1:2022; table of foot, shaft, free-hole flange and tapped-hole flange sizes for frames 63 to 132M (public source file, address not recorded)",
      "C3": "Teaching model of one 4-pole 1.5 kW frame 90L pump motor with free-hole flange, citing IEC 60072-1 and EN 50347 (mounting values, run-out limits) (public source file, address not recorded)",
      "C4": "Procedure for minimum shaft diameter (machine design), citing DIN 748-1 and IEC 60072-1/-2: motor shaft diameter by shaft height with the 2-pole exception, and shaft-end length by diameter (long series) (public source file, address not recorded)",
      "C5": "Reseller data sheet of one frame 80M foot motor with lettered dimensions (public product page)",
      "C6": "Open 3D model of a close-coupled pump with a 112M motor; states flange FF215 and the 28 x 60 shaft, citing IEC 60072-1 (public source file, address not recorded)",
      "C7": "Product text of a small-motor supplier citing IS 1231 / IEC 60072-1: foot hole spacing and shaft for frames 71, 80, 90 (public source file, address not recorded)",
      "C8": "Modelling script for a size 250M flange motor after a distributor's standard-motor dimension sheet (public source file, address not recorded (size 250M, 2-pole shaft))",
      "K1": "Machine-design page with the DIN 6885-1 parallel-key series, shaft over 6 to 130 mm (public page)",
      "K2": "Fastener reference page with the DIN 6885 / ISO 773 key series, shaft 6 to 58 mm (rest cut off) (public page)",
      "C10": "Motor maker's general catalogue (text copy), two-page dimension table of foot, B5 and B14 motors, sizes 56 to 355L, citing IEC 72-1: H, A, B, C, K, shaft, FF and FT flanges by column (public text copy of the catalogue, maker name withheld)",
      "C11": "Motor maker's catalogue of low-speed permanent magnet motors in standard frames, dimension tables foot-mounted, sizes 280 to 400: A, B, C, K, H, shaft, key, fits (public text copy of the catalogue, maker name withheld)",
      "C12": "Motor maker's catalogue, dimension tables of flange motors to DIN EN 50347, B5 (sizes 56 to 100L read) and B14 (56 to 90L read, 100L in part) (public text copy of the catalogue, maker name withheld)"
    }
  },
  unit: "mm",
  columns: {
    "frame": "frame",
    "height": "frame number",
    "length": "length letter",
    "isUsual": "a length in ordinary use today",
    "H": "shaft height",
    "A": "holes across",
    "B": "holes along",
    "C": "shaft shoulder to the nearest holes",
    "K": "foot hole diameter",
    "shafts": "by pole count: D diameter, E length, F key width, ISO fit of D"
  },
  rows: [
    {"frame":"56","height":56,"length":null,"isUsual":true,"H":[56,1,"C10"],"A":[90,1,"C10"],"B":[71,1,"C10"],"C":[36,1,"C10"],"K":[5.8,1,"C10"],"shafts":[{"poles":"all","D":[9,2,"C10 C12"],"E":[20,2,"C10 C12"],"F":[3,1,"C10"],"fit":["j6",0,""]}]},
    {"frame":"63","height":63,"length":null,"isUsual":true,"H":[63,2,"C1 C2 C10"],"A":[100,2,"C1 C2 C10"],"B":[80,2,"C1 C2 C10"],"C":[40,2,"C1 C2 C10"],"K":[7,2,"C1 C2 C10"],"shafts":[{"poles":"all","D":[11,2,"C1 C2 C4 C10 C12"],"E":[23,2,"C1 C2 C4 C10 C12"],"F":[4,2,"C1 K1 K2 C10"],"fit":["j6",1,"C1"]}]},
    {"frame":"71","height":71,"length":null,"isUsual":true,"H":[71,2,"C1 C2 C10"],"A":[112,2,"C1 C2 C7 C10"],"B":[90,2,"C1 C2 C7 C10"],"C":[45,2,"C1 C2 C10"],"K":[7,2,"C1 C2 C10"],"shafts":[{"poles":"all","D":[14,2,"C1 C2 C4 C7 C10 C12"],"E":[30,2,"C1 C2 C4 C10 C12"],"F":[5,2,"C1 K1 K2 C10"],"fit":["j6",1,"C1"]}]},
    {"frame":"80","height":80,"length":null,"isUsual":true,"H":[80,2,"C2 C5 C10"],"A":[125,2,"C2 C5 C7 C10"],"B":[100,2,"C2 C5 C7 C10"],"C":[50,2,"C2 C5 C10"],"K":[10,2,"C2 C5 C10"],"shafts":[{"poles":"all","D":[19,2,"C2 C4 C5 C7 C10 C12"],"E":[40,2,"C2 C5 C4 C10 C12"],"F":[6,2,"C5 K1 K2 C10"],"fit":["j6",1,"C7"]}]},
    {"frame":"90S","height":90,"length":"S","isUsual":true,"H":[90,2,"C1 C2 C3 C10"],"A":[140,2,"C1 C2 C3 C7 C10"],"B":[100,2,"C1 C2 C7 C10"],"C":[56,2,"C1 C2 C3 C10"],"K":[10,2,"C1 C2 C3 C10"],"shafts":[{"poles":"all","D":[24,2,"C1 C2 C3 C4 C7 C10 C12"],"E":[50,2,"C1 C2 C3 C4 C10 C12"],"F":[8,2,"C1 C3 K1 K2 C10"],"fit":["j6",2,"C1 C7"]}]},
    {"frame":"90L","height":90,"length":"L","isUsual":true,"H":[90,2,"C1 C2 C3 C10"],"A":[140,2,"C1 C2 C3 C7 C10"],"B":[125,2,"C1 C2 C3 C7 C10"],"C":[56,2,"C1 C2 C3 C10"],"K":[10,2,"C1 C2 C3 C10"],"shafts":[{"poles":"all","D":[24,2,"C1 C2 C3 C4 C7 C10 C12"],"E":[50,2,"C1 C2 C3 C4 C10 C12"],"F":[8,2,"C1 C3 K1 K2 C10"],"fit":["j6",2,"C1 C7"]}]},
    {"frame":"100S","height":100,"length":"S","isUsual":false,"H":[100,1,"C2"],"A":[160,1,"C2"],"B":[112,0,""],"C":[63,1,"C2"],"K":[12,1,"C2"],"shafts":[{"poles":"all","D":[28,2,"C1 C2 C4"],"E":[60,2,"C1 C2 C4"],"F":[8,2,"C1 K1 K2"],"fit":["j6",1,"C1"]}]},
    {"frame":"100L","height":100,"length":"L","isUsual":true,"H":[100,2,"C2 C10"],"A":[160,2,"C2 C10"],"B":[140,2,"C2 C10"],"C":[63,2,"C2 C10"],"K":[12,2,"C2 C10"],"shafts":[{"poles":"all","D":[28,2,"C1 C2 C4 C10 C12"],"E":[60,2,"C1 C2 C4 C10 C12"],"F":[8,2,"C1 K1 K2 C10"],"fit":["j6",1,"C1"]}]},
    {"frame":"112S","height":112,"length":"S","isUsual":false,"H":[112,2,"C1 C2"],"A":[190,2,"C1 C2"],"B":[114,0,""],"C":[70,2,"C1 C2"],"K":[12,2,"C1 C2"],"shafts":[{"poles":"all","D":[28,2,"C1 C2 C4 C6"],"E":[60,2,"C1 C2 C4"],"F":[8,2,"C1 K1 K2"],"fit":["j6",1,"C1"]}]},
    {"frame":"112M","height":112,"length":"M","isUsual":true,"H":[112,2,"C1 C2 C10"],"A":[190,2,"C1 C2 C10"],"B":[140,2,"C1 C2 C10"],"C":[70,2,"C1 C2 C10"],"K":[12,2,"C1 C2 C10"],"shafts":[{"poles":"all","D":[28,2,"C1 C2 C4 C6 C10"],"E":[60,2,"C1 C2 C4 C10"],"F":[8,2,"C1 K1 K2 C10"],"fit":["j6",1,"C1"]}]},
    {"frame":"112L","height":112,"length":"L","isUsual":false,"H":[112,2,"C1 C2"],"A":[190,2,"C1 C2"],"B":[159,0,""],"C":[70,2,"C1 C2"],"K":[12,2,"C1 C2"],"shafts":[{"poles":"all","D":[28,2,"C1 C2 C4 C6"],"E":[60,2,"C1 C2 C4"],"F":[8,2,"C1 K1 K2"],"fit":["j6",1,"C1"]}]},
    {"frame":"132S","height":132,"length":"S","isUsual":true,"H":[132,2,"C1 C2 C10"],"A":[216,2,"C1 C2 C10"],"B":[140,2,"C1 C2"],"C":[89,2,"C1 C2 C10"],"K":[12,2,"C1 C2 C10"],"shafts":[{"poles":"all","D":[38,2,"C1 C2 C4 C10"],"E":[80,2,"C1 C2 C4 C10"],"F":[10,2,"C1 K1 K2 C10"],"fit":["k6",1,"C1"]}]},
    {"frame":"132M","height":132,"length":"M","isUsual":true,"H":[132,2,"C1 C2 C10"],"A":[216,2,"C1 C2 C10"],"B":[178,2,"C1 C2 C10"],"C":[89,2,"C1 C2 C10"],"K":[12,2,"C1 C2 C10"],"shafts":[{"poles":"all","D":[38,2,"C1 C2 C4 C10"],"E":[80,2,"C1 C2 C4 C10"],"F":[10,2,"C1 K1 K2 C10"],"fit":["k6",1,"C1"]}]},
    {"frame":"132L","height":132,"length":"L","isUsual":false,"H":[132,2,"C1 C2"],"A":[216,2,"C1 C2"],"B":[203,1,"C1"],"C":[89,2,"C1 C2"],"K":[12,2,"C1 C2"],"shafts":[{"poles":"all","D":[38,2,"C1 C2 C4"],"E":[80,2,"C1 C2 C4"],"F":[10,2,"C1 K1 K2"],"fit":["k6",1,"C1"]}]},
    {"frame":"160S","height":160,"length":"S","isUsual":false,"H":[160,1,"C1"],"A":[254,1,"C1"],"B":[178,0,""],"C":[108,1,"C1"],"K":[14.5,1,"C1"],"shafts":[{"poles":"all","D":[42,2,"C1 C4"],"E":[110,2,"C1 C4"],"F":[12,2,"C1 K1 K2"],"fit":["k6",1,"C1"]}]},
    {"frame":"160M","height":160,"length":"M","isUsual":true,"H":[160,2,"C1 C10"],"A":[254,2,"C1 C10"],"B":[210,2,"C1 C10"],"C":[108,2,"C1 C10"],"K":[14.5,1,"C1"],"shafts":[{"poles":"all","D":[42,2,"C1 C4 C10"],"E":[110,2,"C1 C4 C10"],"F":[12,2,"C1 K1 K2 C10"],"fit":["k6",1,"C1"]}]},
    {"frame":"160L","height":160,"length":"L","isUsual":true,"H":[160,2,"C1 C10"],"A":[254,2,"C1 C10"],"B":[254,2,"C1 C10"],"C":[108,2,"C1 C10"],"K":[14.5,1,"C1"],"shafts":[{"poles":"all","D":[42,2,"C1 C4 C10"],"E":[110,2,"C1 C4 C10"],"F":[12,2,"C1 K1 K2 C10"],"fit":["k6",1,"C1"]}]},
    {"frame":"180S","height":180,"length":"S","isUsual":false,"H":[180,1,"C1"],"A":[279,1,"C1"],"B":[203,0,""],"C":[121,1,"C1"],"K":[14.5,1,"C1"],"shafts":[{"poles":"all","D":[48,2,"C1 C4"],"E":[110,2,"C1 C4"],"F":[14,2,"C1 K1 K2"],"fit":["k6",1,"C1"]}]},
    {"frame":"180M","height":180,"length":"M","isUsual":true,"H":[180,2,"C1 C10"],"A":[279,2,"C1 C10"],"B":[241,2,"C1 C10"],"C":[121,2,"C1 C10"],"K":[14.5,1,"C1"],"shafts":[{"poles":"all","D":[48,2,"C1 C4 C10"],"E":[110,2,"C1 C4 C10"],"F":[14,2,"C1 K1 K2 C10"],"fit":["k6",1,"C1"]}]},
    {"frame":"180L","height":180,"length":"L","isUsual":true,"H":[180,2,"C1 C10"],"A":[279,2,"C1 C10"],"B":[279,2,"C1 C10"],"C":[121,2,"C1 C10"],"K":[14.5,1,"C1"],"shafts":[{"poles":"all","D":[48,2,"C1 C4 C10"],"E":[110,2,"C1 C4 C10"],"F":[14,2,"C1 K1 K2 C10"],"fit":["k6",1,"C1"]}]},
    {"frame":"200S","height":200,"length":"S","isUsual":false,"H":[200,1,"C1"],"A":[318,1,"C1"],"B":[228,0,""],"C":[133,1,"C1"],"K":[18.5,1,"C1"],"shafts":[{"poles":"all","D":[55,2,"C1 C4"],"E":[110,2,"C1 C4"],"F":[16,2,"C1 K1 K2"],"fit":["m6",2,"C1 C4"]}]},
    {"frame":"200M","height":200,"length":"M","isUsual":false,"H":[200,1,"C1"],"A":[318,1,"C1"],"B":[267,1,"C1"],"C":[133,1,"C1"],"K":[18.5,1,"C1"],"shafts":[{"poles":"all","D":[55,2,"C1 C4"],"E":[110,2,"C1 C4"],"F":[16,2,"C1 K1 K2"],"fit":["m6",2,"C1 C4"]}]},
    {"frame":"200L","height":200,"length":"L","isUsual":true,"H":[200,2,"C1 C10"],"A":[318,2,"C1 C10"],"B":[305,2,"C1 C10"],"C":[133,2,"C1 C10"],"K":[18.5,1,"C1"],"shafts":[{"poles":"all","D":[55,2,"C1 C4 C10"],"E":[110,2,"C1 C4 C10"],"F":[16,2,"C1 K1 K2 C10"],"fit":["m6",2,"C1 C4"]}]},
    {"frame":"225S","height":225,"length":"S","isUsual":true,"H":[225,2,"C1 C10"],"A":[356,2,"C1 C10"],"B":[286,2,"C1 C10"],"C":[149,2,"C1 C10"],"K":[18.5,1,"C1"],"shafts":[{"poles":"2","D":[55,2,"C1 C4"],"E":[110,2,"C1 C4"],"F":[16,2,"C1 K1 K2"],"fit":["m6",2,"C1 C4"]},{"poles":"4 and more","D":[60,2,"C1 C4 C10"],"E":[140,2,"C1 C4 C10"],"F":[18,2,"C1 K1 C10"],"fit":["m6",2,"C1 C4"]}]},
    {"frame":"225M","height":225,"length":"M","isUsual":true,"H":[225,2,"C1 C10"],"A":[356,2,"C1 C10"],"B":[311,2,"C1 C10"],"C":[149,2,"C1 C10"],"K":[18.5,1,"C1"],"shafts":[{"poles":"2","D":[55,2,"C1 C4 C10"],"E":[110,2,"C1 C4 C10"],"F":[16,2,"C1 K1 K2 C10"],"fit":["m6",2,"C1 C4"]},{"poles":"4 and more","D":[60,2,"C1 C4 C10"],"E":[140,2,"C1 C4 C10"],"F":[18,2,"C1 K1 C10"],"fit":["m6",2,"C1 C4"]}]},
    {"frame":"225L","height":225,"length":"L","isUsual":false,"H":[225,1,"C1"],"A":[356,1,"C1"],"B":[356,0,""],"C":[149,1,"C1"],"K":[18.5,1,"C1"],"shafts":[{"poles":"2","D":[55,2,"C1 C4"],"E":[110,2,"C1 C4"],"F":[16,2,"C1 K1 K2"],"fit":["m6",2,"C1 C4"]},{"poles":"4 and more","D":[60,2,"C1 C4"],"E":[140,2,"C1 C4"],"F":[18,2,"C1 K1"],"fit":["m6",2,"C1 C4"]}]},
    {"frame":"250S","height":250,"length":"S","isUsual":false,"H":[250,0,""],"A":[406,0,""],"B":[311,0,""],"C":[168,0,""],"K":[24,0,""],"shafts":[{"poles":"2","D":[60,2,"C4 C8"],"E":[140,2,"C1 C4"],"F":[18,2,"C1 K1"],"fit":["m6",2,"C1 C4"]},{"poles":"4 and more","D":[65,1,"C4"],"E":[140,1,"C4"],"F":[18,2,"K1 C11"],"fit":["m6",1,"C4"]}]},
    {"frame":"250M","height":250,"length":"M","isUsual":true,"H":[250,1,"C10"],"A":[406,1,"C10"],"B":[349,1,"C10"],"C":[168,1,"C10"],"K":[24,1,"C10"],"shafts":[{"poles":"2","D":[60,2,"C4 C8 C10"],"E":[140,2,"C1 C4 C10"],"F":[18,2,"C1 K1 C10"],"fit":["m6",2,"C1 C4"]},{"poles":"4 and more","D":[65,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[18,2,"K1 C10"],"fit":["m6",1,"C4"]}]},
    {"frame":"250L","height":250,"length":"L","isUsual":false,"H":[250,0,""],"A":[406,0,""],"B":[406,0,""],"C":[168,0,""],"K":[24,0,""],"shafts":[{"poles":"2","D":[60,2,"C4 C8"],"E":[140,2,"C1 C4"],"F":[18,2,"C1 K1"],"fit":["m6",2,"C1 C4"]},{"poles":"4 and more","D":[65,1,"C4"],"E":[140,1,"C4"],"F":[18,2,"K1 C11"],"fit":["m6",1,"C4"]}]},
    {"frame":"280S","height":280,"length":"S","isUsual":true,"H":[280,2,"C10 C11"],"A":[457,2,"C10 C11"],"B":[368,2,"C10 C11"],"C":[190,2,"C10 C11"],"K":[24,2,"C10 C11"],"shafts":[{"poles":"2","D":[65,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[18,2,"K1 C10"],"fit":["m6",2,"C4 C11"]},{"poles":"4 and more","D":[75,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[20,2,"K1 C10"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"280M","height":280,"length":"M","isUsual":true,"H":[280,2,"C10 C11"],"A":[457,2,"C10 C11"],"B":[419,2,"C10 C11"],"C":[190,2,"C10 C11"],"K":[24,2,"C10 C11"],"shafts":[{"poles":"2","D":[65,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[18,2,"K1 C10"],"fit":["m6",2,"C4 C11"]},{"poles":"4 and more","D":[75,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[20,2,"K1 C10"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"280L","height":280,"length":"L","isUsual":false,"H":[280,0,""],"A":[457,0,""],"B":[457,0,""],"C":[190,0,""],"K":[24,0,""],"shafts":[{"poles":"2","D":[65,1,"C4"],"E":[140,1,"C4"],"F":[18,2,"K1 C11"],"fit":["m6",1,"C4"]},{"poles":"4 and more","D":[75,1,"C4"],"E":[140,1,"C4"],"F":[20,2,"K1 C11"],"fit":["m6",1,"C4"]}]},
    {"frame":"315S","height":315,"length":"S","isUsual":true,"H":[315,2,"C10 C11"],"A":[508,2,"C10 C11"],"B":[406,2,"C10 C11"],"C":[216,2,"C10 C11"],"K":[28,2,"C10 C11"],"shafts":[{"poles":"2","D":[65,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[18,2,"K1 C10"],"fit":["m6",2,"C4 C11"]},{"poles":"4 and more","D":[80,2,"C4 C10"],"E":[170,2,"C4 C10"],"F":[22,2,"K1 C10"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"315M","height":315,"length":"M","isUsual":true,"H":[315,2,"C10 C11"],"A":[508,2,"C10 C11"],"B":[457,2,"C10 C11"],"C":[216,2,"C10 C11"],"K":[28,2,"C10 C11"],"shafts":[{"poles":"2","D":[65,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[18,2,"K1 C10"],"fit":["m6",2,"C4 C11"]},{"poles":"4 and more","D":[80,2,"C4 C10"],"E":[170,2,"C4 C10"],"F":[22,2,"K1 C10"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"315L","height":315,"length":"L","isUsual":true,"H":[315,2,"C10 C11"],"A":[508,2,"C10 C11"],"B":[508,2,"C10 C11"],"C":[216,2,"C10 C11"],"K":[28,2,"C10 C11"],"shafts":[{"poles":"2","D":[65,2,"C4 C10"],"E":[140,2,"C4 C10"],"F":[18,2,"K1 C10"],"fit":["m6",2,"C4 C11"]},{"poles":"4 and more","D":[80,2,"C4 C10"],"E":[170,2,"C4 C10"],"F":[22,2,"K1 C10"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"355S","height":355,"length":"S","isUsual":true,"H":[355,1,"C11"],"A":[610,1,"C11"],"B":[500,1,"C11"],"C":[254,1,"C11"],"K":[28,0,""],"shafts":[{"poles":"2","D":[75,0,""],"E":[140,0,""],"F":[20,1,"C11"],"fit":["m6",1,"C11"]},{"poles":"4 and more","D":[100,1,"C4"],"E":[210,1,"C4"],"F":[28,2,"K1 C11"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"355M","height":355,"length":"M","isUsual":true,"H":[355,2,"C10 C11"],"A":[610,2,"C10 C11"],"B":[560,1,"C11"],"C":[254,2,"C10 C11"],"K":[28,1,"C10"],"shafts":[{"poles":"2","D":[75,1,"C10"],"E":[140,1,"C10"],"F":[20,2,"C10 C11"],"fit":["m6",1,"C11"]},{"poles":"4 and more","D":[100,1,"C4"],"E":[210,1,"C4"],"F":[28,2,"K1 C11"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"355L","height":355,"length":"L","isUsual":true,"H":[355,2,"C10 C11"],"A":[610,2,"C10 C11"],"B":[630,2,"C10 C11"],"C":[254,2,"C10 C11"],"K":[28,1,"C10"],"shafts":[{"poles":"2","D":[75,1,"C10"],"E":[140,1,"C10"],"F":[20,2,"C10 C11"],"fit":["m6",1,"C11"]},{"poles":"4 and more","D":[100,1,"C4"],"E":[210,1,"C4"],"F":[28,2,"K1 C11"],"fit":["m6",2,"C4 C11"]}]},
    {"frame":"400S","height":400,"length":"S","isUsual":false,"H":[400,1,"C11"],"A":[686,0,""],"B":[560,0,""],"C":[280,0,""],"K":[35,1,"C11"],"shafts":[{"poles":"2","D":[80,0,""],"E":[170,0,""],"F":[22,1,"C11"],"fit":["m6",1,"C11"]},{"poles":"4 and more","D":[110,0,""],"E":[210,0,""],"F":[28,0,""],"fit":["m6",1,"C11"]}]},
    {"frame":"400M","height":400,"length":"M","isUsual":true,"H":[400,1,"C11"],"A":[686,0,""],"B":[630,0,""],"C":[280,0,""],"K":[35,1,"C11"],"shafts":[{"poles":"2","D":[80,0,""],"E":[170,0,""],"F":[22,1,"C11"],"fit":["m6",1,"C11"]},{"poles":"4 and more","D":[110,0,""],"E":[210,0,""],"F":[28,0,""],"fit":["m6",1,"C11"]}]},
    {"frame":"400L","height":400,"length":"L","isUsual":true,"H":[400,1,"C11"],"A":[686,0,""],"B":[710,0,""],"C":[280,0,""],"K":[35,1,"C11"],"shafts":[{"poles":"2","D":[80,0,""],"E":[170,0,""],"F":[22,1,"C11"],"fit":["m6",1,"C11"]},{"poles":"4 and more","D":[110,0,""],"E":[210,0,""],"F":[28,0,""],"fit":["m6",1,"C11"]}]},
  ],
  notes: [
    "A 2-pole machine has a thinner shaft than 4 poles and more from shaft height 225 up (EN 50347). Below 225 the shaft is the same for all pole counts.",
    "A and C depend on the shaft height only; B depends on the length letter. B is not monotone across heights (160L 254, 180M 241).",
    "Only the frames with in_en50347_outputs true carry a standard output; other lengths exist in IEC 60072-1 and are met on DC, older and special machines.",
    "A motor marked with a double length (S/M, M/L) has two or three pairs of foot holes: it fits every B of those letters.",
    "56 fit, 63 fit, 71 fit, 80 fit, 90S fit, 90L fit, 100S fit, 100L fit, 112S fit, 112M fit, 112L fit: C4 prints k6 for every shaft below 55; C7 prints k6 for one 14 mm row; the standard rule is j6 to 28, k6 32 to 48, m6 from 55",
    "100S H, 100S A, 100S C, 100S K, 112S H, 112S A, 112S C, 112S K, 112L H, 112L A, 112L C, 112L K, 132L H, 132L A, 132L C, 132L K, 160S H, 160S A, 160S C, 180S H, 180S A, 180S C, 200S H, 200S A, 200S C, 200S K, 200M H, 200M A, 200M C, 200M K, 225L H, 225L A, 225L C, 225L K: read on a sister length of the same shaft height",
    "160S K, 180S K: makers A and B print 14.5; maker C prints 15 on frame 160",
    "160M K, 160L K, 180M K, 180L K: makers A and B print 14.5; maker C prints 15 on frame 160; C10 prints 15",
    "200L K, 225S K, 225M K: C10 prints 19",
    "225S D: EN 50347 gives no 2-pole output for 225S; shaft shown for completeness",
    "355S K, 355M K, 355L K: C11 prints 35",
    "355S D, 355M D, 355L D: not fixed by EN 50347; common 2-pole shafts are 65 (C4), 75 and 80: read the nameplate drawing",
    "355S E, 355M E, 355L E, 400S E, 400S E, 400M E, 400M E, 400L E, 400L E: length series by diameter as in shaft_ends",
    "355S D: not fixed by EN 50347; 95, 100 and 110 all occur",
    "355M B: C10 prints 500",
    "355M D, 355L D: not fixed by EN 50347; 95, 100 and 110 all occur; C10 prints 95",
    "355M E, 355L E: C10 prints 170",
    "400S A, 400M A, 400L A: C11 prints 710",
    "400S C, 400M C, 400L C: C11 prints 224",
    "400S D, 400M D, 400L D: not fixed by EN 50347; maker practice",
    "400S D, 400M D, 400L D: not fixed by EN 50347; 100, 110 and 120 occur"
  ],
};
