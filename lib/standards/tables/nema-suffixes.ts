// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

export interface NemaSuffixesRow {
  suffix: string;
  meaning: Cell<string>;
}

export const nemaSuffixes: Table<NemaSuffixesRow> = {
  source: {
    "standard": "ANSI/NEMA MG 1-2016, clause 4.2 (4.2.1, Table 4-2, 4.2.2 letters)",
    "edition": "MG 1-2016",
    "clause": "4.2.2",
    "texts": {
      "S1": "Open engineering data book of an ANSI-accredited pump-standards institute; transcribes MG 1 clauses 4.4.1, 4.4.4, 4.4.5 and Tables 18-28, 18-30, 18-33, 18-34 with their footnotes (https://github.com/hydraulic-institute/edb (snapshot f1aaddd, files under source/04_piping-materials-IV))",
      "S3": "Large frame chart reproduced on an engineering reference site, a bearing supplier page and two document hosts (one origin, so counted as ONE source); includes pre-1952 frames marked with a hash, and a C-face table (public engineering reference page and copies)",
      "S7": "One-page guideline sheet: close-coupled pump shaft table (143JM to 286JP, fractions) and suffix letters; same publisher family as S3 (public document host)",
      "S11": "Two quick-reference dimension pages listing the BA change for C-face motors that also have feet, and the prefix/suffix remarks (one origin) (public reference page)",
      "S12": "Consultant article listing MG 1 suffix letters A to JP with clause references (public article)",
      "S13": "Motor-repair company articles on frame numbers and suffix letters (public articles)",
      "S14": "Mechanical-considerations page and its copies: number rule, suffix and prefix meanings (public reference page)",
      "S16": "Electrical engineering blog note on short-shaft motors (public article)",
      "S17": "Utility energy library page on frame designation (three generations, dates) (public educational page)"
    }
  },
  unit: "none",
  columns: {
    "suffix": "letters after the frame number",
    "meaning": "what they say of the motor"
  },
  rows: [
    {"suffix":"A","meaning":["industrial direct-current machine",1,"S12"]},
    {"suffix":"B","meaning":["carbonator pump motor",1,"S12"]},
    {"suffix":"C","meaning":["type C face (tapped holes, male rabbet) on the drive end",2,"S12 S14"]},
    {"suffix":"CH","meaning":["type C face whose face dimensions differ from those of plain C on that frame; one suffix, not C plus H",2,"S12 S13"]},
    {"suffix":"D","meaning":["type D flange (clearance holes) on the drive end",2,"S12 S14"]},
    {"suffix":"E","meaning":["elevator-motor shaft extension, frames above 326T",1,"S12"]},
    {"suffix":"F","meaning":["face on the end opposite the drive end",1,"S12"]},
    {"suffix":"FC","meaning":["type C face on the end opposite the drive end",1,"S1"]},
    {"suffix":"FD","meaning":["type D flange on the end opposite the drive end",0,""]},
    {"suffix":"G","meaning":["gasoline pump motor",1,"S12"]},
    {"suffix":"H","meaning":["small motor with a longer F dimension than the plain frame (48H, 56H); a 56H base usually takes both 56 and 143T/145T hole spacing",2,"S12 S14"]},
    {"suffix":"HP / HPH","meaning":["vertical solid-shaft motor, type P base (HP normal thrust family); one suffix each",1,"S12"]},
    {"suffix":"J","meaning":["jet pump motor: C face with threaded shaft",2,"S12 S14"]},
    {"suffix":"JM","meaning":["close-coupled pump motor, C face, ball bearings, short pump shaft",2,"S12 S14"]},
    {"suffix":"JP","meaning":["close-coupled pump motor, C face, ball bearings, long pump shaft",2,"S12 S14"]},
    {"suffix":"K","meaning":["hub for sump pump mounting",2,"S7 S13"]},
    {"suffix":"LP / LPH","meaning":["vertical solid-shaft motor, type P base, medium thrust family",1,"S13"]},
    {"suffix":"M","meaning":["oil-burner motor flange, 6-3/4 inch bolt circle",2,"S7 S14"]},
    {"suffix":"N","meaning":["oil-burner motor flange, 7-1/4 inch bolt circle",2,"S7 S14"]},
    {"suffix":"P / PH","meaning":["vertical hollow-shaft motor with type P (or PH) base",1,"S1"]},
    {"suffix":"R","meaning":["drive-end tapered shaft extension",0,""]},
    {"suffix":"S","meaning":["short standard shaft for direct connection, not for belt, chain or gear drive",2,"S13 S16"]},
    {"suffix":"T","meaning":["1964 re-rate dimensions (current standard)",2,"S7 S17"]},
    {"suffix":"TS","meaning":["T frame with short standard shaft",2,"S1 S14"]},
    {"suffix":"U","meaning":["1952-53 re-rate dimensions (superseded)",2,"S7 S17"]},
    {"suffix":"US","meaning":["U frame with short standard shaft",0,""]},
    {"suffix":"V","meaning":["vertical mounting only",0,""]},
    {"suffix":"VP","meaning":["vertical solid-shaft motor for vertical turbine pumps, type P base",1,"S1"]},
    {"suffix":"X","meaning":["wound-rotor crane motor with double shaft extension",0,""]},
    {"suffix":"Y","meaning":["special mounting dimensions: a maker drawing is needed",2,"S11 S7"]},
    {"suffix":"Z","meaning":["special shaft dimensions: a maker drawing is needed",2,"S11 S7"]},
    {"suffix":"YZ","meaning":["both mounting and shaft special",1,"S3"]},
  ],
  notes: [],
};
