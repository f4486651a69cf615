import type { Dialect } from './dialect';

/** Windows-1252 from 0x80 to 0x9F (WHATWG Encoding, index windows-1252); U+0081 and four more stand for themselves. */
const HIGH = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/**
 * Decodes a text part by part. Throws TypeError on bytes that the encoding does not have. Some versions of Node take
 * Windows-1252 for ISO 8859-1, whose 0x80 to 0x9F are control signs: those are put right.
 */
export function decoderOf(encoding: NonNullable<Dialect['encoding']>, { isStrict }: { isStrict: boolean }) {
  const isHigh = encoding === 'windows-1252';
  const decoder = new TextDecoder(encoding, { fatal: isStrict && !isHigh });
  return (bytes: Uint8Array, isMore: boolean): string => {
    const text = decoder.decode(bytes, { stream: isMore });
    return isHigh ? text.replaceAll(/[\u0080-\u009f]/g, (sign) => HIGH[sign.charCodeAt(0) - 0x80] ?? sign) : text;
  };
}
