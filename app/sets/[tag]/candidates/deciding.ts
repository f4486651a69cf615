import type { Reason } from '@/app/look/candidate-row';
import { CRITERION_WORDS, hoursText } from '@/app/look/words';
import type { Finding, Grade } from '@/lib/matching/finding';

const WORST_FIRST: readonly Grade[] = ['block', 'check', 'work', 'note'];

/** The findings that decide, worst first, as a row of the list tells them. */
export function deciding(findings: readonly Finding[]): Reason[] {
  const told = WORST_FIRST.flatMap((grade) => findings.filter((finding) => finding.grade === grade)).filter(isNewWork);
  if (told.length > 0) return told.map(reasonOf);
  return [{ grade: 'ok', text: `Fits in all ${findings.length} points asked`, time: null }];
}

/** One piece of work that cures two findings is told once. */
const isNewWork = ({ grade, work }: Finding, i: number, all: readonly Finding[]): boolean =>
  grade !== 'work' || all.findIndex((other) => other.work?.id === work?.id) === i;

function reasonOf({ grade, criterion, says, work, reading }: Finding): Reason {
  if (reading !== null) {
    const [, what, minutes] = READING.exec(reading) ?? [null, reading, null];
    return { grade, text: what ?? reading, time: minutes ? `${minutes} min` : null };
  }
  if (work !== null) return { grade, text: work.what, time: hoursText(work.hours) };
  return { grade, text: `${CRITERION_WORDS[criterion]}: ${says}`, time: null };
}

/** A reading ends with its minutes in brackets. */
const READING = /^(.*) \((\d+(?:\.\d+)?) min\)$/s;
