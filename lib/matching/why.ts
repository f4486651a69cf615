import { figure } from '@/lib/units/figure';
import { decidedBy, isMeasureFirst, type Key, type Placed, type Whereabouts } from './order';

/**
 * Why a candidate stands above the next in the list, in a sentence; then what its time on the shelf asks for.
 * `next` is null at the end of the list, `testHours` is what a spare's test takes.
 */
export function whyOf(
  one: Placed,
  next: Placed | null,
  isAlone: boolean,
  wantedKw: number | null,
  testHours: number,
): string {
  const { refused, test } = one.spare;
  if (refused !== null) return `Not offered: ${refused}.`;
  const place = next === null ? (isAlone ? 'The only candidate.' : 'Last in the list.') : against(one, next, wantedKw);
  return test === null ? place : `${place} ${test}: test it first (${figure(testHours)} h).`;
}

function against(one: Placed, next: Placed, wantedKw: number | null): string {
  const other = next.candidate.id;
  const key = decidedBy(one, next);
  if (key === null) return `Level with ${other}: listed by plant number.`;
  return `Above ${other}: ${REASON[key](one, next, wantedKw)}.`;
}

const REASON: Record<Key, (one: Placed, next: Placed, wantedKw: number | null) => string> = {
  refused: (_, next) => `${next.candidate.id} is not offered`,
  source: (one, next) => `${from(one.whereabouts)}, ${next.candidate.id} ${from(next.whereabouts)}`,
  standing: (one, next) => `${standing(one)}, ${next.candidate.id} ${standing(next)}`,
  hours: (one, next) => `${figure(next.hours - one.hours)} h less work`,
  soonness: (one, next) => `${from(one.whereabouts)}, ${next.candidate.id} ${from(next.whereabouts)}`,
  checks: (one, next) => `${next.place.checks - one.place.checks} fewer to check`,
  power: (one, next, wantedKw) => nearer(one.kw, next.kw, wantedKw),
};

function standing(one: Placed): string {
  if (isMeasureFirst(one)) {
    const { checks } = one.place;
    return `a straight swap once ${checks === 1 ? 'one short reading is' : `${checks} short readings are`} taken`;
  }
  switch (one.verdict) {
    case 'straight-swap':
      return 'a straight swap';
    case 'swap-with-work':
      return 'a swap with work';
    case 'check-first':
      return 'to be checked first';
    case 'unsuitable':
      return 'unsuitable';
  }
}

function nearer(kw: number | null, other: number | null, wantedKw: number | null): string {
  if (kw === null || wantedKw === null) return 'nearer in power';
  const than = other === null ? 'an unknown power' : `${figure(other)} kW`;
  return `${figure(kw)} kW is nearer to the ${figure(wantedKw)} kW asked for than ${than}`;
}

const FROM: Record<Whereabouts, string> = {
  'same-store': 'in this store',
  'same-site': 'in another store of the site',
  'other-site': 'at another site',
  'on-order': 'on order',
  'other-set': 'in another set',
  'to-buy': 'still to be bought',
};
const from = (whereabouts: Whereabouts | null) => (whereabouts === null ? 'in hand' : FROM[whereabouts]);
