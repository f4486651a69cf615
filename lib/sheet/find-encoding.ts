import type { Dialect } from './dialect';

type Encoding = NonNullable<Dialect['encoding']>;

/** The encoding of a text, by its mark, by whether it can be UTF-8, by where its zero bytes stand (WHATWG Encoding; RFC 3629). */
export function encodingOf(bytes: Uint8Array): { encoding: Encoding; hasMark: boolean; says: string } {
  const told = (encoding: Encoding, hasMark: boolean, says: string) => ({ encoding, hasMark, says });
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return told('utf-8', true, 'Its mark says UTF-8.');
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return told('utf-16le', true, 'Its mark says UTF-16, low byte first.');
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return told('utf-16be', true, 'Its mark says UTF-16, high byte first.');
  const zeros = zeroBytes(bytes.subarray(0, 4_096));
  if (zeros !== null) return told(zeros, false, 'It has no mark; every other byte is zero, so UTF-16 was taken.');
  if (isUtf8(bytes))
    return told(
      'utf-8',
      false,
      isAscii(bytes)
        ? 'It holds plain letters only: any encoding reads it alike.'
        : 'It has no mark; its bytes are UTF-8.',
    );
  return told(
    'windows-1252',
    false,
    'It has no mark and its bytes are not UTF-8, so Windows-1252 was taken: look at names with ü, é or °.',
  );
}

/** Letters of western plates leave the high byte of UTF-16 zero. */
function zeroBytes(head: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  let even = 0;
  let odd = 0;
  head.forEach((byte, i) => {
    if (byte !== 0) return;
    if (i % 2 === 0) even += 1;
    else odd += 1;
  });
  const half = head.length / 2;
  if (odd > 0.6 * half && even < 0.1 * half) return 'utf-16le';
  if (even > 0.6 * half && odd < 0.1 * half) return 'utf-16be';
  return null;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

const isAscii = (bytes: Uint8Array): boolean => bytes.every((byte) => byte < 0x80);
