import type { SiteSettings } from '@/lib/plant/site-settings';
import type { WorkId } from '@/lib/plant/work';
import type { Work } from './finding';

type Timed = Pick<Work, 'id' | 'hours'>;

/**
 * Hours to fit a candidate: the base item of every swap and each distinct kind of work once. Two findings that ask for
 * the same work share it; where their hours differ the longer counts. `besides` is work that no finding carries.
 */
export function hoursOf(
  findings: readonly { work: Timed | null }[],
  settings: SiteSettings,
  besides: readonly WorkId[] = [],
): number {
  let sum = settings.hours.swap;
  const done: Timed[] = [];
  for (const { work } of findings) if (work !== null) sum += added(done, work);
  for (const id of besides) sum += added(done, { id, hours: settings.hours[id] });
  return Math.round(sum * 100) / 100;
}

/** What this work adds to the hours of those before it. */
function added(done: Timed[], work: Timed): number {
  for (let i = 0; i < done.length; i += 1) {
    const before = done[i];
    if (before?.id !== work.id) continue;
    if (before.hours >= work.hours) return 0;
    done[i] = work;
    return work.hours - before.hours;
  }
  done.push(work);
  return work.hours;
}
