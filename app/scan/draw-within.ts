/** Draws a picture on a canvas, made smaller so that its longer side has at most so many pixels. */
export function drawWithin(
  canvas: HTMLCanvasElement,
  picture: HTMLVideoElement | ImageBitmap,
  size: { width: number; height: number },
  longest: number,
): void {
  const scale = Math.min(1, longest / Math.max(size.width, size.height));
  canvas.width = Math.max(1, Math.round(size.width * scale));
  canvas.height = Math.max(1, Math.round(size.height * scale));
  canvas.getContext('2d', { willReadFrequently: true })?.drawImage(picture, 0, 0, canvas.width, canvas.height);
}
