import type { Query } from '../lists/asked-for';
import { PICTURE_WORDS, type PictureWord } from './picture-words';

/** After a photograph was sent or retired: what came of it. */
export function PictureNote({ query: { picture } }: { query: Query }) {
  const word = WORDS.find((one) => one === picture);
  return word === undefined ? null : (
    <p className="problem-list" role="status">
      {PICTURE_WORDS[word]}
    </p>
  );
}

const WORDS = Object.keys(PICTURE_WORDS) as PictureWord[];
