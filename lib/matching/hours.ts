import type { SiteSettings } from '@/lib/plant/site-settings';
import type { WorkId } from '@/lib/plant/work';
import type { Finding } from './finding';

/**
 * Hours to fit a candidate: the base item of every swap and each distinct kind of work once. Two findings that ask for
 * the same work share it; where their hours differ the longer counts. `besides` is work that no finding carries.
 */
export function hoursOf(findings: readonly Finding[], settings: SiteSettings, besides: readonly WorkId[] = []): number {
  const hours = new Map<WorkId, number>([['swap', settings.hours.swap]]);
  const add = (id: WorkId, of: number) => hours.set(id, Math.max(of, hours.get(id) ?? of));
  for (const { work } of findings) if (work !== null) add(work.id, work.hours);
  for (const id of besides) add(id, settings.hours[id]);
  let sum = 0;
  for (const of of hours.values()) sum += of;
  return Math.round(sum * 100) / 100;
}
