import type { Status } from '../dimension';

/** Least insulation resistance of a winding before it is put to power, one-minute reading at 40 °C. */
export const insulationMinimum = {
  source: {
    standard: 'IEEE 43-2013',
    clause: 'table 3, recommended minimum insulation resistance at 40 °C',
    read: "a test technicians' summary of the table",
    second: 'a trade association article confirms the 40 °C base',
  },
  unit: 'MΩ',
  columns: { winding: 'how the winding is made', belowVolts: 'for rated volts below this', megohm: 'least reading' },
  rows: [
    { winding: 'random-wound, and form-wound below 1 kV', belowVolts: 1000, megohm: 5, status: 'published' },
    { winding: 'form-wound, made after about 1970', belowVolts: null, megohm: 100, status: 'published' },
  ],
  notes: ['Windings made before about 1970 may go by kV + 1: their age is not known here, so the newer rule is kept.'],
} satisfies {
  rows: readonly { winding: string; belowVolts: number | null; megohm: number; status: Status }[];
  [part: string]: unknown;
};
