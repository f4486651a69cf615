import { NO_TEXTS, type ReadingTexts } from '@/lib/job/reading-texts';

/** What the form held when it was sent, as it was typed. */
export interface SwapValues {
  key: string;
  why: string;
  whyWords: string;
  outTo: string;
  shelfId: string;
  workDone: string[];
  checks: string[];
  readings: ReadingTexts;
  shimsPresentMm: string;
  note: string;
  stops: string;
}

export interface FormProblem {
  /** The id of the field. */
  path: string;
  says: string;
}

/** What became of the last sending; `asked` before the first. */
export type SwapState = { values: SwapValues } & (
  | { outcome: 'asked' }
  | { outcome: 'refused'; problems: FormProblem[] }
  | { outcome: 'taken'; says: string; when: string | null }
  /** It could not be asked at all: nobody signed in, or no database. */
  | { outcome: 'away'; says: string }
);

export const emptyValues = (key: string): SwapValues => ({
  key,
  why: '',
  whyWords: '',
  outTo: '',
  shelfId: '',
  workDone: [],
  checks: [],
  readings: NO_TEXTS,
  shimsPresentMm: '',
  note: '',
  stops: '',
});

/** Why a motor comes out, in the words most often needed. */
export const WHYS = [
  'Bearing',
  'Winding',
  'Water got in',
  'Shaft, key or coupling',
  'Changed, not failed',
  'Not known yet',
];
