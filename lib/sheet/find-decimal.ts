import type { Dialect } from './dialect';

/** The decimal sign, told by figures that can only be read with one: "0,75", "7,5", "1.450,0". */
export function decimalOf(text: string, delimiter: string): { decimal: Dialect['decimal']; says: string } {
  let commas = 0;
  let dots = 0;
  for (const cell of text.split(new RegExp(`[\\n\\r${delimiter === '|' ? '\\|' : delimiter}]`))) {
    const bare = cell.replaceAll('"', '').trim().slice(0, 40);
    if (ONLY_COMMA.test(bare)) commas += 1;
    else if (ONLY_DOT.test(bare)) dots += 1;
  }
  // Where commas part the cells, a decimal comma stands in quotes, and the split above has torn it.
  if (delimiter === ',') commas = [...text.matchAll(/"\s*\d{1,6},(\d{1,2}|\d{4,})\s*"/g)].length;
  if (commas > 0 && dots > 0)
    return commas > 9 * dots
      ? { decimal: ',', says: `Nearly all figures have a comma as decimal sign (${commas} of ${commas + dots}).` }
      : dots > 9 * commas
        ? { decimal: '.', says: `Nearly all figures have a dot as decimal sign (${dots} of ${commas + dots}).` }
        : {
            decimal: null,
            says: `Some figures have a comma as decimal sign (${commas}), others a dot (${dots}): say which holds.`,
          };
  if (commas > 0) return { decimal: ',', says: `Its figures have a comma as decimal sign (${commas} tell so).` };
  if (dots > 0) return { decimal: '.', says: `Its figures have a dot as decimal sign (${dots} tell so).` };
  return { decimal: null, says: 'No figure tells which decimal sign it has.' };
}

// Three digits behind the sign could be thousands; so they tell nothing, unless a zero stands before it.
const UNIT = String.raw`(?:\s?(?:k?w|hp|v|a|hz|mm|in|kg|lb|°?c|%)\.?)?`;
const ONLY_COMMA = new RegExp(
  String.raw`^[-−]?(?:\d{1,6},(?:\d{1,2}|\d{4,6})|0,\d{3}|\d{1,3}(?:\.\d{3})+,\d+)${UNIT}$`,
  'i',
);
const ONLY_DOT = new RegExp(
  String.raw`^[-−]?(?:\d{1,6}\.(?:\d{1,2}|\d{4,6})|0\.\d{3}|\d{1,3}(?:,\d{3})+\.\d+)${UNIT}$`,
  'i',
);
