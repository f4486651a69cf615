import type { FormProblem } from '@/lib/fields/read-form';
import { readNumber } from '@/lib/units/read-number';
import type { Query } from '../lists/asked-for';
import { onASheet, PAPERS, type Paper } from './papers';

/** How labels are to be printed. */
export interface PrintAsked {
  paper: Paper;
  /** Which label of the first sheet is the first, from 1. */
  start: number;
  copies: number;
  /** Of many labels, which part, from 1. */
  part: number;
}

export const MOST_COPIES = 20;
/** As many labels as one page holds; the rest stands on the next. */
const MOST_LABELS = 300;

/** How the address asks for labels to be printed; what was not understood is said, and is the first or one. */
export function printAsked(query: Query): { print: PrintAsked; problems: FormProblem[] } {
  const paper = PAPERS.find(({ id }) => id === query.paper) ?? (PAPERS[0] as Paper);
  const problems: FormProblem[] = [];
  const whole = (path: string, told: string | string[] | undefined, max: number, label: string): number => {
    const text = typeof told === 'string' ? told.trim() : '';
    if (text === '') return 1;
    const read = readNumber(text, { min: 1, max });
    if (read.ok && Number.isInteger(read.value)) return read.value;
    problems.push({ path, says: `${label}: “${text.slice(0, 40)}” is no whole number from 1 to ${max}.` });
    return 1;
  };
  // A place of the sheet that was pressed goes before what stands in the field.
  // A roll has no sheet that others were taken from.
  const places = onASheet(paper);
  const start = places === 1 ? 1 : whole('start', query.first ?? query.start, places, 'First label');
  const copies = whole('copies', query.copies, MOST_COPIES, 'Copies');
  const part = whole('part', query.part, 10_000, 'Part');
  return { print: { paper, start, copies, part }, problems };
}

/** Which records are on a part, and where on its first sheet it goes on. */
export function partOf({ paper, start, copies, part }: PrintAsked): { skip: number; take: number; start: number } {
  const take = Math.floor(MOST_LABELS / copies);
  const skip = (part - 1) * take;
  return { skip, take, start: ((start - 1 + skip * copies) % onASheet(paper)) + 1 };
}
