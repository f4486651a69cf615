import { REFUSAL_WORDS } from '@/lib/picture/refusal';

/** What came of sending or retiring a photograph, by the word that stands in the address afterwards. */
export const PICTURE_WORDS = {
  ...REFUSAL_WORDS,
  kept: 'The photograph is kept.',
  same: 'This photograph was kept already.',
  retired: 'The photograph is retired.',
  several: 'More than one picture was chosen. Send one at a time.',
  caption: 'The caption must be one line of at most 200 characters.',
  full: 'As many photographs as a list shows are kept already. Retire one first.',
  unknown: 'What it is of is not in use in the register of this site.',
  large: 'The picture is too large and was not kept. Set the camera to a smaller size.',
  failed: 'The picture could not be kept. Send it again here.',
  gone: 'There is no such photograph any more.',
} as const;

export type PictureWord = keyof typeof PICTURE_WORDS;

/** A page with what came of it in its question: "/motors/M-7?picture=kept". */
export function toldAt(path: string, word: PictureWord): string {
  const url = new URL(path, 'http://here.invalid');
  url.searchParams.set('picture', word);
  return `${url.pathname}${url.search}`;
}

/** The same at the photographs of the page. */
export const backTo = (path: string, word: PictureWord): string => `${toldAt(path, word)}#photographs`;
