import { expect, test } from 'vitest';
import { terminalBox } from '@/lib/matching/criteria/mount/terminal-box';
import { asked, gradeAndWork } from './asked';

const face = { mounting: 'face', base: { cableEntry: 'right' } };

// F-1 left, F-2 right, F-3 top, seen from the drive end: MG 1 Figure 4-6.
test.each([
  ['the same side', { base: { cableEntry: 'left' } }, {}, 'ok', null],
  ['the other side', { base: { cableEntry: 'right' } }, {}, 'work', 'terminal-box'],
  ['on top', { base: { cableEntry: 'right' } }, { terminalBox: 'top' }, 'work', 'terminal-box'],
  ['F-2 is right', { base: { cableEntry: 'right' } }, { terminalBox: null, mounting: 'F-2' }, 'ok', null],
  ['F-3 is on top', { base: { cableEntry: 'top' } }, { terminalBox: null, mounting: 'F-3' }, 'ok', null],
  [
    'told on the plate wins over the symbol',
    { base: { cableEntry: 'right' } },
    { terminalBox: 'left', mounting: 'F-2' },
    'work',
    'terminal-box',
  ],
  ['unknown', { base: { cableEntry: 'right' } }, { terminalBox: null }, 'check', null],
  [
    'unknown, with a code that does not tell',
    { base: { cableEntry: 'right' } },
    { frame: '112M', terminalBox: null, mounting: 'IM B3' },
    'check',
    null,
  ],
  ['held by its face alone', face, { frame: '184TC', mounting: 'face' }, 'note', null],
  ['held by its face, but with feet', face, { frame: '112M', mounting: 'IM B35' }, 'work', 'terminal-box'],
] as const)('terminal box: %s', (_, ofSet, ofMotor, grade, work) => {
  expect(gradeAndWork(asked(terminalBox, ofSet as object, ofMotor as object))).toEqual([grade, work]);
});

test('a terminal box is not asked when the set states no cable entry', () => {
  expect(asked(terminalBox, {}, { terminalBox: null })).toBeNull();
});
