import { drawWithin } from './draw-within';
import type { FindCode } from './find-code';

/** Longer sides at which a photograph is looked at, in pixels: small ones are quick, large ones hold small codes. */
const LONGEST = [900, 1800, 3200];

/** What the codes in a photograph hold; null: it is no picture that this browser shows. */
export async function codesInPhoto(file: File, find: FindCode): Promise<string[] | null> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return null;
  }
  const canvas = document.createElement('canvas');
  try {
    for (const longest of LONGEST) {
      drawWithin(canvas, picture, picture, longest);
      const found = await find(canvas);
      if (found.length > 0) return found;
    }
    return [];
  } finally {
    picture.close();
  }
}
