import type { WorkId } from '@/lib/plant/work';

/** Worst last. */
export const GRADES = ['ok', 'note', 'work', 'check', 'block'] as const;
export type Grade = (typeof GRADES)[number];

export const CRITERIA = [
  'mounting',
  'shaft-height',
  'foot-holes',
  'shaft-position',
  'shaft-diameter',
  'shaft-length',
  'key',
  'face',
  'terminal-box',
  'envelope',
  'lift',
  'phases',
  'voltage',
  'frequency',
  'starting',
  'full-load-current',
  'drive-suitability',
  'speed',
  'power',
  'torque',
  'breakaway',
  'duty',
  'loading',
  'enclosure',
  'temperature-altitude',
  'area-classification',
  'washdown',
  'auxiliaries',
  'rotation',
  'bearings',
  'efficiency-class',
] as const;
export type CriterionId = (typeof CRITERIA)[number];

export interface Work {
  id: WorkId;
  /** What to do, with its quantities: "Shim each foot by 2.3 mm". */
  what: string;
  hours: number;
}

/**
 * The answer to one criterion. `have` is the candidate's, `need` the set's; `difference` = have − need in `unit`,
 * nominal against nominal, null where either is no number. A `check` says who can clear it: `reading` anyone can take
 * (then `reading` names it, where, and its minutes), or a competent `person`.
 */
export interface Finding {
  criterion: CriterionId;
  grade: Grade;
  have: number | string | null;
  need: number | string | null;
  unit: string | null;
  difference: number | null;
  says: string;
  work: Work | null;
  by: 'reading' | 'person' | null;
  reading: string | null;
  cite: string;
}

/** The two values a criterion compared, and the clause it rests on. */
export interface Compared {
  criterion: CriterionId;
  have: number | string | null;
  need: number | string | null;
  unit?: string | null;
  cite: string;
}

export const ok = (compared: Compared, says: string): Finding => finding('ok', compared, says, null, null, null);
export const note = (compared: Compared, says: string): Finding => finding('note', compared, says, null, null, null);
export const block = (compared: Compared, says: string): Finding => finding('block', compared, says, null, null, null);
export const needsWork = (compared: Compared, says: string, work: Work): Finding =>
  finding('work', compared, says, work, null, null);

/** A check that anyone can clear by a reading: what, where, and about how many minutes it takes. */
export const toRead = (compared: Compared, says: string, what: string, minutes: number): Finding =>
  finding('check', compared, says, null, 'reading', `${what} (${minutes} min)`);

/** A check that only a competent person can clear. Work already known to be needed may stand beside it. */
export const toJudge = (compared: Compared, says: string, work: Work | null = null): Finding =>
  finding('check', compared, says, work, 'person', null);

function finding(
  grade: Grade,
  { criterion, have, need, unit = null, cite }: Compared,
  says: string,
  work: Work | null,
  by: Finding['by'],
  reading: string | null,
): Finding {
  const difference = typeof have === 'number' && typeof need === 'number' ? tidy(have - need) : null;
  return { criterion, grade, have, need, unit, difference, says, work, by, reading, cite };
}

/** Clears binary dust (112 − 114.3 = −2.3, not −2.299…97). */
const tidy = (value: number) => Math.round(value * 1e6) / 1e6;

const RANK = { ok: 0, note: 1, work: 2, check: 3, block: 4 } as const satisfies Record<Grade, number>;

export const isWorse = (a: Grade, b: Grade): boolean => RANK[a] > RANK[b];
