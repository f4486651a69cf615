import { expect, test } from 'vitest';
import { frameSize } from '@/lib/plausibility/motor/frame-size';
import { withRow } from '../row';

const of = (frame: string | null, row = {}, rest: Parameters<typeof withRow>[1] = {}) =>
  frameSize(withRow(row, { frame, ...rest }));
const iec = (frame: string, kw: number, rest = {}) =>
  of(frame, { hp: null, kw, hertz: 50 }, { mounting: 'IM B3', design: 'N', codeLetter: null, ...rest });

// NEMA MG 1 Part 13, 4 poles: 5 hp 184T, 7.5 hp 213T, 10 hp 215T (read in two texts or one). Sizes in a row: 143T, 145T, 182T, 184T,
// 213T, 215T, 254T, 256T, 284T. How far apart is odd: common practice, no source.
test.each([
  ['as assigned', '215T', { hp: 10 }, null],
  ['one size smaller', '213T', { hp: 10 }, null],
  ['two sizes smaller', '184T', { hp: 10 }, 'doubtful'],
  ['three sizes smaller', '182T', { hp: 10 }, 'doubtful'],
  ['four sizes smaller', '145T', { hp: 10 }, 'wrong'],
  ['three sizes larger', '256T', { hp: 7.5 }, null],
  ['four sizes larger', '284T', { hp: 7.5 }, 'doubtful'],
  ['far larger, never wrong', '449T', { hp: 1 }, 'doubtful'],
  ['a U frame is larger by design', '286U', { hp: 7.5 }, null],
  ['a U frame that is too small', '213', { hp: 20 }, 'doubtful'],
  ['a face and a pump shaft change nothing', '182JM', { hp: 20 }, 'wrong'],
  ['56 to 3 hp', '56C', { hp: 3 }, null],
  ['56 with 5 hp', '56C', { hp: 5 }, 'doubtful'],
  ['56 with 10 hp', '56HC', { hp: 10 }, 'wrong'],
  ['beyond the table', '449T', { hp: 400 }, null],
] as const)('NEMA, %s', (_, frame, row, grade) => {
  expect(of(frame, row)?.grade ?? null).toBe(grade);
});

// EN 50347, 4 poles: 4 kW 112M, 7.5 kW 132M, 5.5 kW 132S (read in two texts). Heights: 80, 90, 100, 112, 132, 160, 180, 200.
test.each([
  ['as assigned', '132M', 7.5, null],
  ['one height smaller', '112M', 7.5, null],
  ['two heights smaller', '100L', 7.5, 'doubtful'],
  ['three heights smaller', '90L', 7.5, 'wrong'],
  ['two heights larger', '180M', 7.5, null],
  ['three heights larger', '200L', 7.5, 'doubtful'],
  ['3.7 kW is 4 kW short', '112M', 3.7, null],
  ['beyond the table', '315L', 800, null],
])('IEC, %s', (_, frame, kw, grade) => {
  expect(iec(frame, kw)?.grade ?? null).toBe(grade);
});

test('it names what the standard assigns', () => {
  expect(of('145T', { hp: 10 })).toMatchObject({
    field: 'frame',
    expected: '215T',
    says: '10 hp with 4 poles stands on frame 145T; the standard assigns 215T, 4 sizes larger.',
  });
});

test('poles not told are read from the speed', () => {
  expect(of('145T', { hp: 10 }, { poles: null })?.grade).toBe('wrong');
  expect(of('145T', { hp: 10, rpm: null }, { poles: null })).toBeNull();
});

test.each([
  ['no frame', of(null, { hp: 50 })],
  ['no power', of('143T', { hp: null })],
  ['a frame nobody knows', of('192T', { hp: 50 })],
  ['two speeds', of('143T', { hp: 50 }, { kind: 'two-speed' })],
  ['a permanent magnet', of('143T', { hp: 50 }, { kind: 'permanent-magnet' })],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
