import type { Refusal } from './refusal';

export type Kind = 'jpeg' | 'png' | 'webp';

/** What a file is by its first bytes, whatever its name says; or why it is none of the kinds that are read. */
export function kindOf(bytes: Uint8Array): Kind | Refusal {
  if (bytes.length === 0) return 'empty';
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 64)).toString('latin1');
  if (head.startsWith('\xff\xd8\xff')) return 'jpeg';
  if (head.startsWith('\x89PNG\r\n\x1a\n')) return isMovingPng(bytes) ? 'moving' : 'png';
  if (head.startsWith('RIFF') && head.startsWith('WEBP', 8)) return 'webp';
  if (head.startsWith('GIF8')) return 'gif';
  if (head.startsWith('%PDF')) return 'document';
  if (head.startsWith('ftyp', 4)) return 'heic';
  // A byte order mark, written as one or as three characters here, may stand before text.
  return /^(\xef\xbb\xbf|\xff\xfe|\xfe\xff)?[\s\0]*</.test(head) ? 'drawing' : 'kind';
}

/** A PNG moves when a chunk acTL stands before its first data (PNG, third edition, 11.3.6.1). */
function isMovingPng(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 8; at + 8 <= bytes.length; at += 12 + view.getUint32(at)) {
    const chunk = Buffer.from(bytes.buffer, bytes.byteOffset + at + 4, 4).toString('latin1');
    if (chunk === 'acTL') return true;
    if (chunk === 'IDAT') return false;
  }
  return false;
}
