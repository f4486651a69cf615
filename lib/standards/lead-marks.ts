/**
 * The mark that IEC 60034-8 puts where NEMA MG 1 puts T1 to T12: 1 to 6 as a motor shop's table pairs them, and 7 (U3);
 * the rest of the row from memory.
 */
const IEC_MARKS = ['U1', 'V1', 'W1', 'U2', 'V2', 'W2', 'U3', 'V3', 'W3', 'U4', 'V4', 'W4'] as const;

/** Both marks of a lead by its NEMA number, 1 to 12. */
export function leadMarks(number: number): { nema: string; iec: string } {
  const iec = IEC_MARKS[number - 1];
  if (iec === undefined) throw new Error(`No lead has the number ${number}`);
  return { nema: `T${number}`, iec };
}
