import { type Finding, type Grade, isWorse, type Work } from '../finding';

/** Who must clear what cannot be told: nobody, anybody with the readings named, or a competent person. */
export type Cleared = 'nobody' | 'readings' | 'person';

/** What some criteria say of a set and a motor, as far as a verdict and its hours rest on it. */
export interface Share {
  grade: Grade;
  /** Each kind of work once, at its longest. */
  work: readonly Pick<Work, 'id' | 'hours'>[];
  clearedBy: Cleared;
}

export function shareOf(findings: readonly Finding[]): Share {
  let grade: Grade = 'ok';
  let clearedBy: Cleared = 'nobody';
  const work: Share['work'][number][] = [];
  for (const finding of findings) {
    // A note changes nothing.
    if (finding.grade !== 'note' && isWorse(finding.grade, grade)) grade = finding.grade;
    if (finding.grade === 'check') clearedBy = harder(clearedBy, finding.by === 'reading' ? 'readings' : 'person');
    if (finding.work !== null) add(work, finding.work);
  }
  return { grade, work, clearedBy };
}

/** What both say together. */
export function joined(a: Share, b: Share): Share {
  const work = [...a.work];
  for (const one of b.work) add(work, one);
  return { grade: isWorse(a.grade, b.grade) ? a.grade : b.grade, work, clearedBy: harder(a.clearedBy, b.clearedBy) };
}

function add(work: Share['work'][number][], { id, hours }: Share['work'][number]): void {
  const i = work.findIndex((one) => one.id === id);
  if (i < 0) work.push({ id, hours });
  else if ((work[i] as Share['work'][number]).hours < hours) work[i] = { id, hours };
}

const HARDER: readonly Cleared[] = ['nobody', 'readings', 'person'];
const harder = (a: Cleared, b: Cleared): Cleared => (HARDER.indexOf(a) >= HARDER.indexOf(b) ? a : b);
