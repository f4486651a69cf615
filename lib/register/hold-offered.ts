import type { SiteSettings } from '@/lib/plant/site-settings';
import { buildsOf } from '@/lib/spares/hold/build';
import type { HoldCandidate, Offered } from '@/lib/spares/hold/candidate';
import type { ListedPrice } from '@/lib/spares/hold/price-list';
import { priceOf } from '@/lib/spares/hold/price-of';
import type { HoldAsked } from './hold-asked';

/** What buying it is taken to cost, and the site's days of delivery; an own build is made to order. */
export function offeredOf(
  { from, motor }: HoldCandidate,
  { price, days }: Pick<HoldAsked, 'price' | 'days'>,
  settings: SiteSettings,
): Offered {
  if (from === 'shelf') return { price: null, leadDays: 0 };
  const siteDays = buildsOf(motor).length === 0 ? settings.deliveryDays : settings.specialDeliveryDays;
  return { price: priceOf(motor, price), leadDays: days ?? siteDays };
}

/** Lines of the list by which nothing that could be bought is priced: a slip of the pen, or another plant's. */
export function idleLines(list: readonly ListedPrice[], offered: readonly Offered[]): ListedPrice[] {
  const used = new Set(offered.flatMap(({ price }) => (price?.by === 'list' ? [price.from] : [])));
  return list.filter((line) => !used.has(line));
}
