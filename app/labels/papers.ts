/** Label papers by their sizes: common practice, no source. Measure a sheet of your own before a large print. */
export interface Paper {
  id: string;
  words: string;
  /** The page of print (app/look/labels.css), in mm. */
  page: { name: 'a4' | 'letter' | 'roll'; widthMm: number; heightMm: number };
  columns: number;
  rows: number;
  label: { widthMm: number; heightMm: number };
  /** From the page's corner to that of the first label. */
  first: { leftMm: number; topMm: number };
  /** From one label to the next. */
  pitch: { acrossMm: number; downMm: number };
  /** What stays free at a label's edges: more where labels end at the paper's edge, which printers leave out. */
  free: { acrossMm: number; downMm: number };
  /** Side of the QR code with its quiet zone. */
  codeMm: number;
}

const A4 = { name: 'a4', widthMm: 210, heightMm: 297 } as const;
const LETTER = { name: 'letter', widthMm: 215.9, heightMm: 279.4 } as const;
const ROLL = { name: 'roll', widthMm: 62, heightMm: 30 } as const;

export const PAPERS: readonly Paper[] = [
  {
    id: 'a4-3x8',
    words: 'A4, 3 × 8, 70 × 37 mm',
    page: A4,
    columns: 3,
    rows: 8,
    label: { widthMm: 70, heightMm: 37 },
    first: { leftMm: 0, topMm: 0.5 },
    pitch: { acrossMm: 70, downMm: 37 },
    free: { acrossMm: 5, downMm: 4.5 },
    codeMm: 28,
  },
  {
    id: 'a4-3x7',
    words: 'A4, 3 × 7, 63.5 × 38.1 mm',
    page: A4,
    columns: 3,
    rows: 7,
    label: { widthMm: 63.5, heightMm: 38.1 },
    first: { leftMm: 7.21, topMm: 15.15 },
    pitch: { acrossMm: 66.04, downMm: 38.1 },
    free: { acrossMm: 2, downMm: 2 },
    codeMm: 30,
  },
  {
    id: 'a4-2x7',
    words: 'A4, 2 × 7, 99.1 × 38.1 mm',
    page: A4,
    columns: 2,
    rows: 7,
    label: { widthMm: 99.1, heightMm: 38.1 },
    first: { leftMm: 4.63, topMm: 15.15 },
    pitch: { acrossMm: 101.64, downMm: 38.1 },
    free: { acrossMm: 2, downMm: 2 },
    codeMm: 34,
  },
  {
    id: 'a4-2x4',
    words: 'A4, 2 × 4, 105 × 74 mm',
    page: A4,
    columns: 2,
    rows: 4,
    label: { widthMm: 105, heightMm: 74 },
    first: { leftMm: 0, topMm: 0.5 },
    pitch: { acrossMm: 105, downMm: 74 },
    free: { acrossMm: 5, downMm: 5 },
    codeMm: 50,
  },
  {
    id: 'letter-3x10',
    words: 'Letter, 3 × 10, 66.7 × 25.4 mm',
    page: LETTER,
    columns: 3,
    rows: 10,
    label: { widthMm: 66.7, heightMm: 25.4 },
    first: { leftMm: 4.75, topMm: 12.7 },
    pitch: { acrossMm: 69.85, downMm: 25.4 },
    free: { acrossMm: 1.5, downMm: 0.2 },
    codeMm: 25,
  },
  {
    id: 'letter-2x5',
    words: 'Letter, 2 × 5, 101.6 × 50.8 mm',
    page: LETTER,
    columns: 2,
    rows: 5,
    label: { widthMm: 101.6, heightMm: 50.8 },
    first: { leftMm: 3.97, topMm: 12.7 },
    pitch: { acrossMm: 106.36, downMm: 50.8 },
    free: { acrossMm: 2, downMm: 2 },
    codeMm: 44,
  },
  {
    id: 'roll-62',
    words: 'Roll 62 mm wide, cut every 30 mm',
    page: ROLL,
    columns: 1,
    rows: 1,
    label: { widthMm: 62, heightMm: 30 },
    first: { leftMm: 0, topMm: 0 },
    pitch: { acrossMm: 62, downMm: 30 },
    free: { acrossMm: 2, downMm: 1.5 },
    codeMm: 27,
  },
];

export const onASheet = ({ columns, rows }: Paper): number => columns * rows;

/** Corner of a label on its page; `place` counts from 0, along the rows. */
export function cornerOf({ columns, first, pitch }: Paper, place: number): { leftMm: number; topMm: number } {
  const [column, row] = [place % columns, Math.floor(place / columns)];
  return { leftMm: first.leftMm + column * pitch.acrossMm, topMm: first.topMm + row * pitch.downMm };
}

/** Between the QR code and the words beside it. */
export const BESIDE_CODE_MM = 1;

/** Width that words have beside the QR code. */
export const wordsMm = ({ label, free, codeMm }: Paper): number =>
  label.widthMm - 2 * free.acrossMm - codeMm - BESIDE_CODE_MM;
