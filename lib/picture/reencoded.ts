import type { Metadata } from 'sharp';
import { inTurn, sharp } from './guarded';
import { type Kind, kindOf } from './kind-of';
import { REFUSAL_WORDS, type Refusal } from './refusal';

export type Reencoded =
  | { ok: true; content: Uint8Array<ArrayBuffer>; mediaType: 'image/webp'; widthPx: number; heightPx: number }
  | { ok: false; why: Refusal; says: string };

/** A plate that fills a third of the width still has 800 px: its smallest stamps have some 15. Tried, no source. */
const LONGEST_SIDE_PX = 2_400;
/** Stamped figures keep their edges at this, and no picture of that size comes near 10 MB. Tried, no source. */
const QUALITY = 84;
const MOST_SECONDS = 10;
/**
 * What one picture may have, so that reading it takes less than 150 MB. A large JPEG is made smaller while it is read;
 * an interlaced or progressive picture of any kind is held whole.
 */
const MOST_PX: Record<Kind | 'whole', number> = { jpeg: 64e6, png: 30e6, webp: 30e6, whole: 12.5e6 };

/**
 * A photograph made anew from its pixels: upright, at most 2,400 px long, in plain sRGB, and without anything that
 * stood beside them, such as the place and the day. What the bytes are decides, not what the sender calls them.
 */
export async function reencoded(bytes: Uint8Array): Promise<Reencoded> {
  const kind = kindOf(bytes);
  if (kind !== 'jpeg' && kind !== 'png' && kind !== 'webp') return refused(kind);
  return inTurn(() => madeAnew(bytes, kind));
}

async function madeAnew(bytes: Uint8Array, kind: Kind): Promise<Reencoded> {
  // Of this only the head is read, however large it says the picture is.
  const told = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch(() => null);
  if (told === null || told.format !== kind) return refused('broken');
  if ((told.pages ?? 1) > 1) return refused('moving');
  if (told.width * told.height > mostPx(told, kind)) return refused('pixels');
  try {
    // Not on a warning: cameras are in use whose every picture earns one.
    const { data, info } = await sharp(bytes, { failOn: 'error', limitInputPixels: MOST_PX[kind] })
      .timeout({ seconds: MOST_SECONDS })
      .autoOrient()
      .resize({ width: LONGEST_SIDE_PX, height: LONGEST_SIDE_PX, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#fff' })
      .toColourspace('srgb')
      .webp({ quality: QUALITY })
      .toBuffer({ resolveWithObject: true });
    const content = new Uint8Array(data);
    return { ok: true, content, mediaType: 'image/webp', widthPx: info.width, heightPx: info.height };
  } catch {
    // What the library says of the inside of a file helps nobody.
    return refused('broken');
  }
}

const mostPx = ({ isProgressive }: Metadata, kind: Kind) => MOST_PX[isProgressive ? 'whole' : kind];

const refused = (why: Refusal): Reencoded => ({ ok: false, why, says: REFUSAL_WORDS[why] });
