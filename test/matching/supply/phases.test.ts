import { expect, test } from 'vitest';
import { phases } from '@/lib/matching/criteria/supply/phases';
import { motor, set } from '../easy';
import { asked } from './asked';

const one = { phases: 1, kind: 'single-phase' } as const;
const drive = { start: 'drive', drive: { outputVolts: 460, baseHertz: 60 } } as const;

// Common practice, no source.
test.each([
  ['three on three', {}, {}, 'ok'],
  ['three on one', { phases: 1 }, {}, 'block'],
  ['one on one', { phases: 1 }, one, 'ok'],
  ['one across two legs of its own voltage', {}, one, 'check'],
  [
    'one across two legs of another voltage',
    {},
    { ...one, ratings: [{ volts: 115, hertz: 60, hp: 1, rpm: 1725 }] },
    'block',
  ],
  ['one across two legs of unknown voltage', { volts: null }, one, 'check'],
  ['three on a drive with a single-phase input', { phases: 1, ...drive }, {}, 'ok'],
  ['one on a drive', { phases: 1, ...drive }, one, 'block'],
  ['unknown of the motor', {}, { phases: null }, 'check'],
  ['unknown of the motor, told by its kind', { phases: 1 }, { phases: null, kind: 'single-phase' }, 'ok'],
  ['unknown of the supply', { phases: null }, {}, 'check'],
] as const)('phases: %s', (_, supply, differs, grade) => {
  expect(asked(phases, set({ supply }), motor(differs as object))?.grade).toBe(grade);
});

test('an unknown number of phases asks for the plate', () => {
  expect(asked(phases, set(), motor({ phases: null }))).toMatchObject({ by: 'reading', need: 3, have: null });
});

test('a single-phase motor on two legs is for a competent person, with the rewiring listed', () => {
  expect(asked(phases, set(), motor(one))).toMatchObject({ by: 'person', work: { id: 'rewire-starter' } });
});
