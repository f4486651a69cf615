import type { Motor } from '@/lib/plant/motor';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { returnTime } from '@/lib/standards/return-time';
import { between, noRange, type Range } from '../range';

const NO_HOURS = 'The hours of work are not known: the motor was not judged.';

/** From failure to running with a motor that is in hand: the hours of work alone, one pair, parts at hand. */
export const downWithShelf = (hours: number | null): Range =>
  hours === null ? noRange(NO_HOURS) : between(hours, hours, 'hours of work of the swap');

/** The same, after the motor was bought: the site's own days, else the times of the trade. */
export function downUntilBought(motor: Motor, hours: number | null, settings: SiteSettings): Range {
  if (hours === null) return noRange(NO_HOURS);
  const kind = specialOf(motor);
  const days = kind === null ? settings.deliveryDays : settings.specialDeliveryDays;
  if (days !== null) return waited(days, days, hours, 'the site’s days of delivery');
  if (kind !== null) return waitedFor(returnTime(kind, kwOf(motor)), hours);
  const best = returnTime('in-stock', kwOf(motor));
  const worst = returnTime('standard', kwOf(motor));
  return waitedFor({ ...worst, lowDays: best.lowDays }, hours);
}

/** The same, while the motor itself is away to be rewound. */
export function downUntilRepaired(kw: number | null, hours: number | null, settings: SiteSettings): Range {
  if (hours === null) return noRange(NO_HOURS);
  const { repairDays } = settings;
  if (repairDays !== null) return waited(repairDays, repairDays, hours, 'the site’s days of repair');
  return waitedFor(returnTime('rewind', kw), hours);
}

/** Made to order: an area mark, or made to be washed. Null: a standard motor. */
function specialOf({ classification, washdown }: Motor): 'area-classified' | 'washdown' | null {
  if (classification !== null) return 'area-classified';
  return washdown === null || washdown === 'none' ? null : 'washdown';
}

const kwOf = ({ ratings }: Motor): number | null => ratings.find(({ kw }) => kw !== null)?.kw ?? null;

const HOURS_OF_A_DAY = 24;

const waited = (lowDays: number, highDays: number, hours: number, from: string): Range =>
  between(lowDays * HOURS_OF_A_DAY + hours, highDays * HOURS_OF_A_DAY + hours, `${from}, and the hours of work`);

const waitedFor = ({ lowDays, highDays, cite }: ReturnType<typeof returnTime>, hours: number): Range =>
  waited(lowDays, highDays, hours, cite);
