import { drawWithin } from '@/app/scan/draw-within';

/** Longer side of a photograph that is kept until there is a network, pixels. */
const LONGEST = 1_600;
const QUALITY = 0.8;

/** A photograph as a small JPEG in base64; null: it is no picture that this browser shows. */
export async function smallPhoto(file: File): Promise<string | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (picture === null) return null;
  const canvas = document.createElement('canvas');
  drawWithin(canvas, picture, picture, LONGEST);
  picture.close();
  return canvas.toDataURL('image/jpeg', QUALITY).replace(/^data:image\/jpeg;base64,/, '');
}
