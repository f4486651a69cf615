/** A heading reduced to its small letters and digits, accents off: what is remembered and compared. */
export const normalHeading = (text: string): string =>
  text
    .slice(0, LONGEST_HEADING)
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll(/[^\p{Ll}\p{Lo}\p{Nd}]/gu, '');

/** Nobody heads a column with more. */
const LONGEST_HEADING = 200;
