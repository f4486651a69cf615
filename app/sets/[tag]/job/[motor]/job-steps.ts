import type { Step } from '@/app/look/print-sheet';
import { CRITERION_WORDS, hoursText } from '@/app/look/words';
import type { Result } from '@/lib/matching/assess';
import type { WorkItem } from '../../work-items';

interface JobSteps {
  readings: Step[];
  work: Step[];
  /** How much there is beyond the swap itself. */
  sum: string;
}

/** What to read or have decided before the work, and the work itself, each once. */
export function jobSteps({ findings }: Result, work: readonly WorkItem[]): JobSteps {
  const open = findings.filter(({ grade }) => grade === 'check' || grade === 'block');
  const readings = open.map(({ criterion, says, reading, by }): Step => {
    const who = by === 'person' ? ' A competent person decides.' : '';
    return { words: `${CRITERION_WORDS[criterion]}: ${reading ?? says}${who}`, blank: '' };
  });
  return {
    readings: [...new Map(readings.map((step) => [step.words, step])).values()],
    work: [
      { words: 'Take the old motor out, set the new one, link the leads for the supply, align, test' },
      ...work.map(({ what, hours }): Step => ({ words: what, value: hoursText(hours) })),
    ],
    sum: `Beyond the swap itself: ${count(open.length, 'to check', 'nothing to check')}, ${count(work.length, 'to do', 'nothing to do')}.`,
  };
}

const count = (of: number, some: string, none: string) => (of === 0 ? none : `${of} ${some}`);
