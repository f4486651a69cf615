import { expect, test } from 'vitest';
import { frameName } from '@/lib/plausibility/motor/frame-name';
import { withRow } from '../row';

const of = (frame: string | null, rest: Parameters<typeof withRow>[1] = {}) =>
  frameName(withRow({}, { frame, ...rest }));

test.each(['184TC', 'L56HC', '182/4T', '284TSCZ', '254U', '143JM', '112M', '132S/M', '100L-4', '90', '112M FF215'])(
  '%s is a frame',
  (frame) => {
    expect(of(frame)).toBeNull();
  },
);

test.each([
  ['a number no series has', '192T', 'doubtful', 'frame'],
  ['letters without a meaning', '184TQ', 'doubtful', 'frame'],
  ['a length its height has not', '90M', 'doubtful', 'frame'],
  ['words', 'see drawing', 'doubtful', 'frame'],
  ['a flange alone', 'FF265', 'doubtful', 'frame'],
  ['other poles in the frame', '100L-6', 'wrong', 'poles'],
])('%s: %s', (_, frame, grade, field) => {
  expect(of(frame)).toMatchObject({ grade, field });
});

test('a frame of both systems is a question of the other rooms, no doubt', () => {
  const bare = { codeLetter: null, design: null, ratings: [] };
  expect(of('56', bare)).toBeNull();
  expect(of('225', bare)).toBeNull();
});

test('it says what is not understood', () => {
  expect(of('90M')?.says).toBe('Frame 90M: 90M is not an IEC frame: there is 90S, 90L.');
  expect(of('100L-6')?.says).toBe('Frame 100L-6 names 6 poles, and the plate is told to have 4.');
});

test('is silent without a frame, and about poles without poles', () => {
  expect(of(null)).toBeNull();
  expect(of('100L-6', { poles: null })).toBeNull();
});
