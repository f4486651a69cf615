import { expect, test } from 'vitest';
import { reviewHead, reviewLine } from '@/app/review/export/review-line';
import { known, unknown } from '@/lib/energy/worked-out';
import type { Cured } from '@/lib/register/review/cured';
import { cost, row } from '../review/list/rows';

const NOTE = { acceptanceId: 'a', reason: 'Kept', by: 'Ida Fenn', at: new Date(), againOn: '2027-06-01' };
const found = (isAccepted: boolean, cured: Cured) => ({
  ...row({ isAccepted, loadPct: 19.6, finding: { cost: cost(120.456, 1_003.8) } }),
  note: NOTE,
  cured,
});
const told = (line: ReturnType<typeof reviewLine>) =>
  Object.fromEntries(reviewHead('EUR').map((head, i) => [String(head), line[i]]));

const BY_MOTOR: Cured = {
  why: null,
  cures: [
    {
      cure: { kind: 'shelf', motor: 'M-3', verdict: 'straight-swap', hours: 2.5, runs: null },
      energy: { moreKwhPerYear: known(-410.2, 'a test'), moreMoneyPerYear: unknown('no price') },
      shelf: 'Main / A1',
    },
  ],
};

test('a row has a cell for each head, each figure under its own', () => {
  const line = reviewLine(found(true, BY_MOTOR));
  expect(line).toHaveLength(reviewHead('EUR').length);
  expect(told(line)).toMatchObject({
    ...{ Tag: 'P-101', 'Load (%)': 20, Have: 20, Need: 40, Difference: -20, Unit: '%' },
    ...{
      'Energy a year (kWh)': 1_004,
      'Money a year (EUR)': 120.46,
      State: 'accepted',
      'Accepted until': '2027-06-01',
    },
    ...{ 'Motor from a shelf': 'M-3', 'Where it waits': 'Main / A1', Verdict: 'Straight swap', Hours: 2.5 },
    ...{ 'More energy a year (kWh)': -410, 'Rating to buy': null, 'Why nothing is known': null },
  });
});

test('an open one tells nothing of an acceptance that fell, and why nothing would put it right', () => {
  expect(told(reviewLine(found(false, { cures: [], why: 'No rating answers.' })))).toMatchObject({
    ...{ State: 'open', 'Accepted until': null, Reason: null, 'Motor from a shelf': null },
    'Why nothing is known': 'No rating answers.',
  });
});

test('a reading and a work each have their column', () => {
  const cures: Cured['cures'] = [
    { cure: { kind: 'work', what: 'Set the drive', hours: 0.5 }, energy: null, shelf: null },
  ];
  expect(told(reviewLine(found(false, { cures, why: null })))).toMatchObject({
    ...{ 'Work at the set': 'Set the drive', 'Hours of that work': 0.5, 'Read first': null },
  });
});
