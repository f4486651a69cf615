import { expect, test } from 'vitest';
import { fullLoadCurrent } from '@/lib/matching/criteria/supply/full-load-current';
import { motor, set } from '../easy';
import { asked } from './asked';

const none = { overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null };
const dial = { ...none, overloadMinA: 9, overloadMaxA: 15 };
const at = (amps: number | null) => motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps }] });

// Overload by the plate: NEC 430.6(A) (read in two texts). 125 % of the cable: NEC 430.22, from memory. 0.58: 1/√3.
test.each([
  ['inside the dial', dial, 12, 'ok'],
  ['at its lower end', dial, 9, 'ok'],
  ['at its upper end', dial, 15, 'ok'],
  ['below the dial', dial, 8.9, 'work'],
  ['above the dial', dial, 15.1, 'work'],
  ['only one end of the dial known', { ...dial, overloadMinA: null }, 12, 'check'],
  ['above the only end known', { ...dial, overloadMinA: null }, 16, 'work'],
  ['at the contactor', { ...none, contactorA: 18 }, 18, 'ok'],
  ['above the contactor', { ...none, contactorA: 18 }, 18.1, 'block'],
  ['1.25 × at the cable', { ...none, cableA: 20 }, 16, 'ok'],
  ['1.25 × above the cable', { ...none, cableA: 20 }, 16.1, 'check'],
  ['plate amps unknown', dial, null, 'check'],
  ['the direct starter’s “phase” means nothing', { ...dial, overloadIn: 'phase' }, 20, 'work'],
  ['star-delta, in the delta', { ...dial, start: 'star-delta', overloadIn: 'phase' }, 20, 'ok'], // 11.6 A
  ['star-delta, in the delta, too small', { ...dial, start: 'star-delta', overloadIn: 'phase' }, 15, 'work'], // 8.7 A
  ['star-delta, in the line', { ...dial, start: 'star-delta', overloadIn: 'line' }, 20, 'work'],
  ['star-delta, where is unknown', { ...dial, start: 'star-delta', overloadIn: null }, 15, 'check'],
  ['star-delta, wherever it is too large', { ...dial, start: 'star-delta', overloadIn: null }, 30, 'check'],
  ['star-delta, contactor may stand in the delta', { ...none, contactorA: 18, start: 'star-delta' }, 25, 'check'],
  ['star-delta, contactor too small anywhere', { ...none, contactorA: 18, start: 'star-delta' }, 32, 'block'],
])('full-load current: %s', (_, supply, amps, grade) => {
  expect(asked(fullLoadCurrent, set({ supply: supply as object }), at(amps))?.grade).toBe(grade);
});

test('an overload too small in the line and in the delta is a reading that lists the work as well', () => {
  const supply = { ...dial, start: 'star-delta', overloadIn: null } as const;
  expect(asked(fullLoadCurrent, set({ supply }), at(30))).toMatchObject({ by: 'reading', work: { id: 'overload' } });
  expect(asked(fullLoadCurrent, set({ supply }), at(15))).toMatchObject({ by: 'reading', work: null });
});

test('is not asked when the set states no dial, contactor, cable or drive', () => {
  expect(asked(fullLoadCurrent, set({ supply: none }), at(null))).toBeNull();
});

test('the new setting is told, in the delta at 0.58 of the plate', () => {
  expect(asked(fullLoadCurrent, set({ supply: dial }), at(20))?.work).toMatchObject({
    id: 'overload',
    what: expect.stringContaining('20 A'),
  });
  const supply = { ...dial, start: 'star-delta', overloadIn: 'phase' } as const;
  expect(asked(fullLoadCurrent, set({ supply }), at(20))?.says).toContain('11.6 A');
});

test('a dial and a cable that both fail are both told, and the work stays', () => {
  const found = asked(fullLoadCurrent, set({ supply: { ...dial, cableA: 20 } }), at(20));
  expect(found).toMatchObject({ grade: 'check', by: 'person', work: { id: 'overload' } });
  expect(found?.says).toMatch(/cable.*dial/);
});

// Common practice, no source.
const drive = { ...none, start: 'drive', drive: { ratedA: 10, outputVolts: 460, baseHertz: 60 } } as const;
test.each([
  ['plate within', 10, null, 'ok'],
  ['plate above, running at 0.9', 11, 9, 'check'],
  ['plate above, running at less than a tenth under', 11, 9.5, 'block'],
  ['plate above, running at the rating', 11, 10, 'block'],
  ['plate within, running at the rating', 10, 10, 'ok'],
  ['plate above, running unknown', 11, null, 'check'],
  ['running above', 11, 10.1, 'block'],
  ['running above though the plate is within', 10, 10.1, 'block'],
  ['plate unknown', null, null, 'check'],
])('a drive of 10 A: %s', (_, amps, runningA, grade) => {
  expect(asked(fullLoadCurrent, set({ supply: drive }), at(amps), runningA)?.grade).toBe(grade);
});
