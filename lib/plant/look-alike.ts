/** A tag or plant number as the database's `norm` column has it: upper case, letters and digits only. */
export const normOf = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, '').toUpperCase();

const ALIKE: Record<string, string> = { O: '0', I: '1', L: '1', S: '5', B: '8', Z: '2' };

/** As the `look_alike` column has it: letters that a worn plate or a hurried hand makes into figures are figures. */
export const lookAlikeOf = (text: string): string =>
  normOf(text).replace(/[OILSBZ]/g, (letter) => ALIKE[letter] ?? letter);
