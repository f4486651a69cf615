import { notUnderstood, type ReadingOfText, understood } from '../units/reading-of-text';

/** Crockford's Base32: figures and capitals without I, L, O and U. The place of a sign is its value. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** Seven signs and the one to check them by. */
const LENGTH = 8;
/** The largest prime that leaves a sign for every remainder. */
const MODULUS = 31;
/** Longer than the link on any label. */
const LONGEST = 300;

/**
 * The code of a label (prisma: new_label_code) from what a QR code holds or a person types: a link to it at whatever
 * host, or the code alone, in any case of letters, with spaces or hyphens, O for 0, I or L for 1. One wrong sign is
 * found, and so are two neighbours that changed places, except where 0 and Z are taken for each other: they differ by 31.
 */
export function readLabelCode(text: string): ReadingOfText<string> {
  const written = text.trim();
  if (written.length > LONGEST) return notUnderstood(written, 'is too long for a label code');
  const part = codePart(written);
  if (part === null) return notUnderstood(written, 'is a link, but not that of a label of this register');
  const code = part
    .replace(/[\s\u2010-\u2015\u2212-]/g, '')
    .toUpperCase()
    .replace(/O/g, '0')
    .replace(/[IL]/g, '1');
  if (code === '') return notUnderstood(written, 'has no label code: it is eight signs, such as 7K3M-X2QP');
  const stranger = [...code].find((sign) => !SIGNS.includes(sign));
  if (stranger !== undefined) return notUnderstood(written, `has “${stranger}”, which no label code has`);
  if (code.length !== LENGTH)
    return notUnderstood(
      written,
      `has ${code.length === 1 ? '1 sign' : `${code.length} signs`}; a label code has eight`,
    );
  if (checkSign(code.slice(0, LENGTH - 1)) !== code.at(-1))
    return notUnderstood(written, 'is no label code: at least one sign is wrong, read it again');
  return understood(code);
}

/** As it stands on the label: four signs, a hyphen, four signs. */
export const labelText = (code: string): string => `${code.slice(0, 4)}-${code.slice(4)}`;

/** Where the link on a label leads, at whatever host. */
export const labelPath = (code: string): string => `/l/${labelText(code)}`;

/** The sum of place times value over the seven signs, places from 1, modulo 31, as a sign. */
function checkSign(signs: string): string {
  let sum = 0;
  for (const [index, sign] of [...signs].entries()) sum += (index + 1) * SIGNS.indexOf(sign);
  return SIGNS.charAt(sum % MODULUS);
}

/** What may be the code in it; null: a link to something else. */
function codePart(written: string): string | null {
  if (!written.includes('/')) return written;
  const link = /\/l\/([^/?#]*)\/?(?:[?#].*)?$/i.exec(written);
  return link === null ? null : decoded(link[1] as string);
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
