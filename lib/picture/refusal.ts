/** Why a picture is not kept, in the words that the person who sent it reads. */
export const REFUSAL_WORDS = {
  empty: 'No picture was chosen.',
  kind: 'This is no picture that can be read here. JPEG, PNG and WebP can.',
  drawing: 'This is text or a drawing (HTML, SVG), not a photograph. Send JPEG, PNG or WebP.',
  document: 'This is a PDF, not a photograph. Send JPEG, PNG or WebP.',
  gif: 'This is a GIF, which is not read here. Send JPEG, PNG or WebP.',
  heic: 'This is a HEIC or AVIF picture, which is not read here. Set the camera to JPEG and take it again.',
  moving: 'This picture moves. Send a still one.',
  pixels: 'This picture has too many pixels to be read. Take it again with a smaller size set in the camera.',
  broken: 'This picture is damaged or not whole. Send it again, or take another.',
} as const;

export type Refusal = keyof typeof REFUSAL_WORDS;
