/** As people and spreadsheets write it: wide letters, odd spaces, odd dashes and what cannot be seen are made plain capitals. */
export const plainText = (text: string): string =>
  text
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/\p{Cf}/gu, '')
    .replaceAll(/[\u2010-\u2015\u2212]/g, '-')
    .replaceAll(/[_\s]+/g, ' ')
    .trim();

/** More than any plate stamps as its frame or mounting. */
export const LONGEST_TEXT = 60;
