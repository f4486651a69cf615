import { expect, test } from 'vitest';
import { derated } from '@/lib/review/load/derated';
import { inPlace, row } from '../in-place';

const HP = 0.7457;
// 50 °C at 2000 m leave 0.86: 25 bhp need 29.1 hp, so a 30 hp motor is chosen (an application manual's worked example).
const thirtyHp = row({ hp: 30, rpm: 1770, amps: 36 });
const hotAndHigh = { surroundings: { ambientC: 50, altitudeM: 2000 } };
test.each([
  ['25 hp of 30 are left over', 25, null],
  ['26 hp are more than 0.86 of 30', 26, 'at-once'],
] as const)('%s', (_, hp, urgency) => {
  const asked = inPlace({ ...hotAndHigh, load: { shaftKw: hp * HP, breakawayPct: null } }, thirtyHp);
  expect(derated(asked)?.urgency ?? null).toBe(urgency);
});

test('6000 ft leave a 50 hp motor 47 hp', () => {
  // A worked example of altitude bands: factor 0.94 (read in one text).
  const fifty = row({ hp: 50, rpm: 1770, amps: 60 });
  const at = (hp: number) => derated(inPlace({ surroundings: { altitudeM: 2000 }, load: { shaftKw: hp * HP } }, fifty));
  expect(at(46)).toBeNull();
  expect(at(48)?.have).toBeCloseTo(47 * HP, 1);
  expect(at(48)?.says).toContain('Height (0.94) leaves 37.28 kW × 0.94 = 35.05 kW');
});

test('volts uneven by 2 % leave a 10 hp motor 9.5 hp', () => {
  // NEMA MG 1 14.36 by a worked example of 460, 467 and 450 V: 1.96 %, 0.95 (read in two texts).
  const ten = row({ hp: 10, rpm: 1760, amps: 12.6 });
  const at = (hp: number) => derated(inPlace({ supply: { unbalancePct: 1.96 }, load: { shaftKw: hp * HP } }, ten));
  expect(at(9.3)).toBeNull();
  expect(at(9.7)?.have).toBeCloseTo(9.5 * HP, 1);
});

test('a plate that shows no ambient is read first where it is hot', () => {
  expect(derated(inPlace({ surroundings: { ambientC: 50 } }, { ambientC: null }))).toMatchObject({
    urgency: 'look',
    reading: expect.stringContaining('ambient'),
  });
});

test('a derated motor whose load nobody knows asks for the load', () => {
  const found = derated(inPlace({ load: { shaftKw: null }, surroundings: { ambientC: 50 } }));
  expect(found).toMatchObject({ urgency: 'look', need: null, reading: expect.stringContaining('Shaft power') });
});

test('hotter than any table is for a person to settle', () => {
  expect(derated(inPlace({ surroundings: { ambientC: 75 } }))?.urgency).toBe('plan');
});

test.each([
  ['in usual surroundings', inPlace()],
  ['where nobody told them', inPlace({ surroundings: { ambientC: null, altitudeM: null } })],
  ['where the load is too much anywhere', inPlace({ load: { shaftKw: 5 }, surroundings: { ambientC: 50 } })],
  ['where enough is left', inPlace({ load: { shaftKw: 2 }, surroundings: { ambientC: 50 } })],
])('says nothing %s', (_, asked) => {
  expect(derated(asked)).toBeNull();
});
