import fc from 'fast-check';
import { REVIEW_RULES, type ReviewFinding, raised, URGENCIES, type YearlyCost } from '@/lib/review/finding';
import type { ReviewRow } from '@/lib/review/list/row';

type Differs = Partial<Omit<ReviewRow, 'finding'>> & { finding?: Partial<ReviewFinding> };

/** An easy row with what differs. */
export function row({ finding, ...differs }: Differs = {}): ReviewRow {
  const easy = raised({
    ...{
      rule: 'oversized',
      urgency: 'next-time',
      have: 20,
      need: 40,
      unit: '%',
      says: 'Loaded to 20 %.',
      cite: 'none',
    },
    figures: {},
  });
  return {
    ...{ setId: 'set-1', tag: 'P-101', service: 'Syrup', areaId: 'area-1', area: 'Hall', criticality: 2, motor: 'M-1' },
    ...{ loadPct: 20, isAccepted: false, ...differs },
    finding: { ...easy, ...finding },
  };
}

export const cost = (money: number, kwh = 10 * money): YearlyCost => ({ kind: 'known', kwh, money, from: 'a test' });

const anyCost: fc.Arbitrary<YearlyCost> = fc.oneof(
  fc.constant<YearlyCost>({ kind: 'not-energy' }),
  fc.record({ kind: fc.constant('unpriced' as const), kwh: fc.option(anyMoney()), why: fc.constant('not told') }),
  fc.record({ kind: fc.constant('known' as const), kwh: anyMoney(), money: anyMoney(), from: fc.constant('a test') }),
);

function anyMoney() {
  return fc.double({ min: 0, max: 1e7, noNaN: true });
}

const AREAS = [null, 'a', 'b', 'c'] as const;

/** Any list of a site: of each set and rule at most one. */
export const anyRows: fc.Arbitrary<ReviewRow[]> = fc.uniqueArray(
  fc
    .record({
      set: fc.integer({ min: 1, max: 12 }),
      area: fc.constantFrom(...AREAS),
      criticality: fc.constantFrom(null, 1, 2, 3, 4),
      loadPct: fc.option(fc.double({ min: 0, max: 200, noNaN: true })),
      isAccepted: fc.boolean(),
      rule: fc.constantFrom(...REVIEW_RULES),
      urgency: fc.constantFrom(...URGENCIES),
      cost: anyCost,
    })
    .map(({ set, area, rule, urgency, cost, ...rest }) =>
      row({
        ...{ setId: `set-${set}`, tag: `P-${set}`, areaId: area, area: area === null ? null : `Hall ${area}` },
        ...rest,
        finding: { rule, urgency, cost },
      }),
    ),
  { maxLength: 40, selector: ({ setId, finding }) => `${setId} ${finding.rule}` },
);
