import { expect, test } from 'vitest';
import { torque } from '@/lib/plausibility/motor/torque';
import { withRow } from '../row';

const of = (lockedRotorPct: number | null, breakdownPct: number | null, rest: Parameters<typeof withRow>[1] = {}) =>
  torque(withRow({}, { lockedRotorPct, breakdownPct, ...rest }));

// NEMA MG 1-12.38 and 12.39, design B, 5 hp, 4 poles: 185 and 225 % (read in one text). IEC 60034-12, design N, 4 kW, 4 poles:
// 170 and 200 % (read in one text). Design C of 10 hp: 250 % (from memory).
test.each([
  ['as promised', 185, 225, {}, null],
  ['more than promised', 240, 300, {}, null],
  ['less locked-rotor torque', 180, 225, {}, 'lockedRotorPct'],
  ['less breakdown torque', 185, 220, {}, 'breakdownPct'],
  ['IEC as promised', 170, 200, { design: 'N' }, null],
  ['IEC less', 165, 200, { design: 'N' }, 'lockedRotorPct'],
  ['design C may break down below its locked-rotor torque', 260, 200, { design: 'C' }, null],
  ['design B does not', 240, 230, {}, 'breakdownPct'],
  ['nor does it with no more than its locked-rotor torque', 230, 230, {}, null],
  [
    'a single-phase motor starts with more than it breaks down at',
    300,
    240,
    { design: null, kind: 'single-phase' },
    null,
  ],
  ['at the most that motors have', 400, 500, { design: null }, null],
  ['more than that', 401, 450, { design: null }, 'lockedRotorPct'],
  ['more breakdown than that', 300, 501, { design: null }, 'breakdownPct'],
] as const)('%s', (_, locked, breakdown, rest, field) => {
  const doubt = of(locked, breakdown, rest);
  expect(doubt?.field ?? null).toBe(field);
  expect(doubt?.grade ?? 'doubtful').toBe('doubtful');
});

test('a motor that stalls before full load is wrong', () => {
  expect(of(null, 75)).toMatchObject({
    grade: 'wrong',
    field: 'breakdownPct',
    says: 'Breakdown torque 75 % is less than the 100 % of full load: it would stall before it carries its rating.',
  });
  expect(of(null, 100, { design: null })).toBeNull();
});

test('the promise is shown with its clause', () => {
  expect(of(150, null)).toMatchObject({
    says: 'Locked-rotor torque 150 %, where design B promises 185 % at 3.73 kW and 4 poles.',
    expected: 185,
    cite: 'MG 1-12.38 (read in one text)',
  });
});

test.each([
  ['no torques', null, null, {}],
  ['no design letter', 120, 150, { design: null }],
  ['no poles', 120, 150, { poles: null }],
  ['no power', 120, 150, { ratings: [] }],
])('is silent with %s', (_, locked, breakdown, rest) => {
  expect(
    torque(withRow({ hp: 'ratings' in rest ? null : 5 }, { lockedRotorPct: locked, breakdownPct: breakdown, ...rest })),
  ).toBeNull();
});
