import type { Finding } from '@/lib/matching/finding';
import type { WorkItem } from '../../work-items';
import type { SwapQuantities } from './read-swap-form';
import type { SwapValues } from './swap-state';

interface Told {
  setId: string;
  motorInId: string;
  motorOutId: string | null;
  fromSetId: string | null;
}

/** The form as the register is asked. What work and checks say comes from the judgement, not from the browser. */
export function requestOf(
  values: SwapValues,
  quantities: SwapQuantities,
  told: Told,
  work: readonly WorkItem[],
  findings: readonly Finding[],
) {
  const cleared = findings.filter(({ grade, criterion }) => grade === 'check' && values.checks.includes(criterion));
  return {
    ...told,
    ...quantities,
    // Told in the readings: the register takes them from there.
    insulationMohm: null,
    overloadA: null,
    key: values.key,
    outTo: told.motorOutId === null ? null : outToOf(values),
    why: [values.why, values.whyWords].filter((words) => words !== '').join(': '),
    note: values.note === '' ? null : values.note,
    workDone: work
      .filter(({ id }) => values.workDone.includes(id))
      .map(({ id, what, hours }) => ({ id, what: clipped(what, 300), hours })),
    checks: cleared.map(({ criterion, says }) => ({ criterion, says: clipped(says, 500) })),
    doneAt: null,
  };
}

const outToOf = ({ outTo, shelfId }: SwapValues) =>
  outTo === 'on-shelf' ? { place: 'on-shelf', shelfId } : { place: outTo };

/** The whole of it stays in the findings, which are kept as they stood. */
const clipped = (text: string, most: number) => (text.length <= most ? text : `${text.slice(0, most - 3)}...`);
