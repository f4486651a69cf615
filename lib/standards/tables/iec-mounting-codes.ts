// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface IecMountingCodesRow {
  codeI: string;
  codeII: Cell<string>;
  feet: boolean;
  flange: string;
  shaft: 'horizontal' | 'vertical down' | 'vertical up';
  feetPosition: string | null;
}

export const iecMountingCodes: Table<IecMountingCodesRow> = {
  source: {
    "standard": "IEC 60034-7:2020 (Code I clause 4, Code II clause 5, Annex A); earlier IEC 60034-7:1992",
    "edition": "IEC 60034-7:2020",
    "clause": "4 (Code I), 5 (Code II)",
    "texts": {
      "M1": "Code list 'Elektromotor bouwvorm' of the road agency of Flanders: pairs of Code I and Code II (https://wegenenverkeer.data.vlaanderen.be/id/conceptscheme/KlElektromotorBouwvorm)",
      "M2": "Motor manual page (Italian, explosion-protected series): table of mounting codes and which positions a motor ordered as B3, B5 or B14 may take; canopy rules (public manual page)",
      "M3": "UK drives supplier page on motor mounting: Code I/Code II list with shaft direction and feet side as seen from the drive end; IEC versus NEMA box position; drain, drip-cover and bearing cautions (public page)"
    }
  },
  unit: "none",
  columns: {
    "codeI": "letter code",
    "codeII": "number code",
    "feet": "has feet",
    "flange": "flange at the drive end, or what else holds it",
    "shaft": "shaft direction it is built for",
    "feetPosition": "where the feet are"
  },
  rows: [
    {"codeI":"IM B3","codeII":["IM 1001",2,"M1 M2 M3"],"feet":true,"flange":"none","shaft":"horizontal","feetPosition":"down"},
    {"codeI":"IM B6","codeII":["IM 1051",2,"M1 M3"],"feet":true,"flange":"none","shaft":"horizontal","feetPosition":"wall, left seen from the drive end"},
    {"codeI":"IM B7","codeII":["IM 1061",2,"M1 M3"],"feet":true,"flange":"none","shaft":"horizontal","feetPosition":"wall, right seen from the drive end"},
    {"codeI":"IM B8","codeII":["IM 1071",2,"M1 M3"],"feet":true,"flange":"none","shaft":"horizontal","feetPosition":"ceiling (feet up)"},
    {"codeI":"IM V5","codeII":["IM 1011",2,"M1 M2 M3"],"feet":true,"flange":"none","shaft":"vertical down","feetPosition":"wall"},
    {"codeI":"IM V6","codeII":["IM 1031",2,"M1 M3"],"feet":true,"flange":"none","shaft":"vertical up","feetPosition":"wall"},
    {"codeI":"IM B5","codeII":["IM 3001",2,"M1 M2 M3"],"feet":false,"flange":"FF","shaft":"horizontal","feetPosition":null},
    {"codeI":"IM V1","codeII":["IM 3011",2,"M1 M2 M3"],"feet":false,"flange":"FF","shaft":"vertical down","feetPosition":null},
    {"codeI":"IM V3","codeII":["IM 3031",1,"M1"],"feet":false,"flange":"FF","shaft":"vertical up","feetPosition":null},
    {"codeI":"IM B14","codeII":["IM 3601",2,"M1 M2"],"feet":false,"flange":"FT","shaft":"horizontal","feetPosition":null},
    {"codeI":"IM V18","codeII":["IM 3611",2,"M1 M2"],"feet":false,"flange":"FT","shaft":"vertical down","feetPosition":null},
    {"codeI":"IM V19","codeII":["IM 3631",1,"M1"],"feet":false,"flange":"FT","shaft":"vertical up","feetPosition":null},
    {"codeI":"IM B35","codeII":["IM 2001",2,"M1 M3"],"feet":true,"flange":"FF","shaft":"horizontal","feetPosition":"down"},
    {"codeI":"IM V15","codeII":["IM 2011",2,"M1 M3"],"feet":true,"flange":"FF","shaft":"vertical down","feetPosition":"wall"},
    {"codeI":"IM V36","codeII":["IM 2031",1,"M1"],"feet":true,"flange":"FF","shaft":"vertical up","feetPosition":"wall"},
    {"codeI":"IM V35","codeII":["IM 2031",0,""],"feet":true,"flange":"FF","shaft":"vertical up","feetPosition":"wall"},
    {"codeI":"IM B34","codeII":["IM 2101",1,"M1"],"feet":true,"flange":"FT","shaft":"horizontal","feetPosition":"down"},
    {"codeI":"IM V17","codeII":["IM 2111",0,""],"feet":true,"flange":"FT","shaft":"vertical down","feetPosition":"wall"},
    {"codeI":"IM V37","codeII":["IM 2131",0,""],"feet":true,"flange":"FT","shaft":"vertical up","feetPosition":"wall"},
    {"codeI":"IM B9","codeII":["IM 9101",0,""],"feet":false,"flange":"none (no drive-end shield; frame face bolts on)","shaft":"horizontal","feetPosition":null},
    {"codeI":"IM V8","codeII":["IM 9111",0,""],"feet":false,"flange":"none (no drive-end shield)","shaft":"vertical down","feetPosition":null},
    {"codeI":"IM V9","codeII":["IM 9131",0,""],"feet":false,"flange":"none (no drive-end shield)","shaft":"vertical up","feetPosition":null},
    {"codeI":"IM B10","codeII":["IM 4001",0,""],"feet":false,"flange":"FF on the frame at the drive end, machine face towards the drive end","shaft":"horizontal","feetPosition":null},
    {"codeI":"IM V10","codeII":["IM 4011",0,""],"feet":false,"flange":"FF on the frame at the drive end","shaft":"vertical down","feetPosition":null},
    {"codeI":"IM V14","codeII":["IM 4031",0,""],"feet":false,"flange":"FF on the frame at the drive end","shaft":"vertical up","feetPosition":null},
    {"codeI":"IM B15","codeII":["IM 1201",0,""],"feet":true,"flange":"frame face, no drive-end shield","shaft":"horizontal","feetPosition":"down"},
    {"codeI":"IM B20","codeII":["IM 1101",0,""],"feet":true,"flange":"none; raised feet","shaft":"horizontal","feetPosition":"down"},
    {"codeI":"IM B25","codeII":["IM 2401",0,""],"feet":true,"flange":"FF; raised feet","shaft":"horizontal","feetPosition":"down"},
    {"codeI":"IM B30","codeII":["IM 9201",0,""],"feet":false,"flange":"pads on shield or frame","shaft":"horizontal","feetPosition":null},
    {"codeI":"IM V2","codeII":["IM 3231",0,""],"feet":false,"flange":"FF on the non-drive end","shaft":"vertical up","feetPosition":null},
    {"codeI":"IM V4","codeII":["IM 3211",0,""],"feet":false,"flange":"FF on the non-drive end","shaft":"vertical down","feetPosition":null},
  ],
  notes: [
    "status of a code row covers the pair of codes; feet side of B6/B7 and shaft direction of V1, V15 were read in M3, the other attributes follow from the code system by memory",
    "IM V36: from memory the 1992 and later editions print IM V35 for IM 2031; IM V36 is the older name that M1 and most catalogues keep: accept both",
    "IM V35: alias of IM V36; see there",
    "IM B9: no shield and no bearing at the drive end",
    "IM B25: low confidence in the Code II number",
    "IM V2: low confidence: V2 and V4 are easily swapped",
    "IM V4: low confidence: V2 and V4 are easily swapped",
    "Every turn from one position into another is allowed with checks only (canopy, drains, bearings, seal)."
  ],
};
