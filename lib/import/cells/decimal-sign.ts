import type { Dialect } from './cell';

/**
 * Figures of a text written with a dot as decimal sign and without thousands signs, by the sheet's own sign. A figure
 * that the sheet's sign makes no sense of ("12,5" where the dot is the sign) is read by the other, and said. Where the
 * sheet's sign is not known nothing is touched: the reader of the figure decides or tells both.
 */
export function byDecimalSign(text: string, decimal: Dialect['decimal']): { text: string; notes: string[] } {
  if (decimal === null) return { text, notes: [] };
  const notes: string[] = [];
  const [point, thousands] = decimal === '.' ? ['.', ','] : [',', '.'];
  const plain = text.slice(0, LONGEST_FIGURES).replaceAll(/\d[\d.,]{0,40}\d/g, (figure) => {
    const parts = figure.split(/[.,]/);
    const signs = [...figure].filter((sign) => sign === '.' || sign === ',');
    if (signs.length === 0) return figure;
    const [whole = '', ...rest] = parts;
    const last = signs.at(-1);
    const groups = last === point ? rest.slice(0, -1) : rest;
    const isGrouped =
      signs.slice(0, groups.length).every((sign) => sign === thousands) &&
      groups.every((group) => group.length === 3) &&
      (groups.length === 0 || /^[1-9]\d{0,2}$/.test(whole));
    if (isGrouped && last === point) return decimals(whole + groups.join(''), rest.at(-1) ?? '');
    if (isGrouped) return whole + groups.join('');
    if (signs.length === 1 && last === thousands) {
      notes.push(`${figure} is read as ${whole}.${rest[0]}: it makes no sense with "${thousands}" as thousands sign`);
      return decimals(whole, rest[0] ?? '');
    }
    return figure;
  });
  return { text: plain, notes };
}

const LONGEST_FIGURES = 200;
/** Three decimals look like thousands: a nought more says that they are not. */
const decimals = (whole: string, part: string): string => `${whole}.${part.length === 3 ? `${part}0` : part}`;
