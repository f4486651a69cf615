/**
 * A line with its odd characters made plain, letter for letter: what was typed stays at the same place, so that it can
 * be shown as it stood.
 */
export const plainLine = (line: string): string => line.replaceAll(ODD, (sign) => PLAIN.get(sign) ?? wide(sign));

const ODD =
  /[\u2010-\u2015\u2212\u207B\u00B9\u00A0\u2007\u2009\u202F\u2044\u2215\u2206\u25B3\u25B2\u2144\u2198\u00D8\u2205\u00F8\u03D5\u0278\u03A6\uFF01-\uFF5E\u3000]/g;
const PLAIN = new Map<string, string>([
  ...[...'\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u207B'].map((sign): [string, string] => [sign, '-']),
  ...[...'\u00A0\u2007\u2009\u202F\u3000'].map((sign): [string, string] => [sign, ' ']),
  ...[...'\u2206\u25B3\u25B2'].map((sign): [string, string] => [sign, 'Δ']),
  ...[...'\u00D8\u2205\u00F8\u03D5\u0278\u03A6'].map((sign): [string, string] => [sign, 'φ']),
  ['\u00B9', '1'],
  ['\u2044', '/'],
  ['\u2215', '/'],
  ['\u2144', 'Y'],
]);

const wide = (sign: string): string => {
  const code = sign.charCodeAt(0);
  return code >= 0xff01 && code <= 0xff5e ? String.fromCharCode(code - 0xfee0) : sign;
};
