import type { ChainItem } from '@/app/look/hours-chain';
import { WORK_WORDS } from '@/app/work-words';
import type { Result } from '@/lib/matching/assess';
import { spareState } from '@/lib/matching/spare-state';
import type { Motor } from '@/lib/plant/motor';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { WorkId } from '@/lib/plant/work';

export interface WorkItem {
  id: WorkId;
  what: string;
  hours: number;
}

/** Each kind of work once, with the longer hours where two findings ask for it; the spare's test where it is due. */
export function workItems(result: Result, motor: Motor, settings: SiteSettings, asOf: string): WorkItem[] {
  const items = new Map<WorkId, WorkItem>();
  for (const { work } of result.findings) {
    if (work === null) continue;
    const before = items.get(work.id);
    if (before === undefined) items.set(work.id, { ...work });
    else
      items.set(work.id, {
        ...before,
        what: together(before.what, work.what),
        hours: Math.max(before.hours, work.hours),
      });
  }
  const { test } = spareState(motor, asOf);
  if (test !== null && !items.has('spare-test'))
    items.set('spare-test', { id: 'spare-test', what: `${test}: test it first`, hours: settings.hours['spare-test'] });
  return [...items.values()];
}

/** The hours as a chain: what every swap takes, then each work item. */
export function chainOf(items: readonly WorkItem[], settings: SiteSettings): ChainItem[] {
  return [
    { words: WORK_WORDS.swap, hours: settings.hours.swap, kind: 'base' },
    ...items
      .filter(({ id }) => id !== 'swap')
      .map(({ id, hours }): ChainItem => ({ words: WORK_WORDS[id], hours, kind: 'work' })),
  ];
}

/** What two findings ask of one kind of work: where the one tells all that the other does, it alone. */
function together(before: string, what: string): string {
  if (before.startsWith(what)) return before;
  return what.startsWith(before) ? what : `${before}; ${what.charAt(0).toLowerCase()}${what.slice(1)}`;
}
