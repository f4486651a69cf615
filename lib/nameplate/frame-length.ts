import { frameName } from '@/lib/standards/frame-name';

/**
 * How much of the text after FRAME is the frame: as many words as make one, or all of it where no number of words does.
 * "4 POLE" belongs to a frame only when it stands glued to it ("100L-4").
 */
export function frameLength(text: string): number {
  const ends = [...text.slice(0, LONGEST).matchAll(/\S+/g)]
    .slice(0, MOST_WORDS)
    .map(({ 0: word, index }) => index + word.length);
  for (const end of ends.toReversed()) if (frameName(text.slice(0, end)).ok) return end;
  for (const end of ends) if (!/^[A-Z]{1,4}$/i.test(text.slice(0, end).trim())) return end;
  return text.length;
}

const LONGEST = 60;
const MOST_WORDS = 6;
