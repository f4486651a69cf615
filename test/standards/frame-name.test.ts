import { describe, expect, test } from 'vitest';
import { type FrameOptions, readFrame } from '@/lib/standards/dimensions-of';

const nameOf = (text: string, options: FrameOptions = {}): string => {
  const read = readFrame(text, options);
  return read.ok ? `${read.value.system} ${read.value.frame}` : read.problems.map(({ says }) => says).join('; ');
};

/** NEMA MG 1-2016 4.2 (numbers, letters) and IEC 60072-1 (heights and lengths); the ways of writing are the trade's. */
describe('a frame is read as people write it', () => {
  test.each([
    ['184TC', 'NEMA 184TC'],
    ['184tc', 'NEMA 184TC'],
    [' 184  TC ', 'NEMA 184TC'],
    ['184\u00a0TC', 'NEMA 184TC'],
    ['184\u200bTC', 'NEMA 184TC'],
    ['１８４ＴＣ', 'NEMA 184TC'],
    ['184T-C', 'NEMA 184TC'],
    ['Frame: 184TC', 'NEMA 184TC'],
    ['FR 184T', 'NEMA 184T'],
    ['NEMA 184T', 'NEMA 184T'],
    ['184T NEMA', 'NEMA 184T'],
    ['S182TC', 'NEMA 182TC'],
    ['L 56HC', 'NEMA 56HC'],
    ['182/4T', 'NEMA 182/4T'],
    ['182-4T', 'NEMA 182/4T'],
    ['182T/184T', 'NEMA 182/4T'],
    ['213/15T', 'NEMA 213/5T'],
    ['143/5T', 'NEMA 143/5T'],
    ['182U', 'NEMA 182'],
    ['143TJM', 'NEMA 143JM'],
    ['254TVP', 'NEMA 254VP'],
    ['5007', 'NEMA 5007'],
    ['364US', 'NEMA 364US'],
    ['324TSCZ', 'NEMA 324TSCZ'],
    ['IEC 90L', 'IEC 90L'],
    ['D132S', 'IEC 132S'],
    ['Y2-132S-4', 'IEC 132S'],
    ['132 S/M', 'IEC 132S/M'],
    ['132SM', 'IEC 132S/M'],
    ['90S/L', 'IEC 90S/L'],
    ['112', 'IEC 112M'],
    ['90', 'IEC 90'],
    ['71', 'IEC 71'],
    ['100L–4', 'IEC 100L'],
    ['100L-4 B35', 'IEC 100L'],
    ['112M 28 FF215', 'IEC 112M'],
    ['112MX', 'IEC 112M'],
    ['225M', 'IEC 225M'],
    ['225S', 'IEC 225S'],
    ['FF 165', 'IEC FF165'],
    ['ft-130', 'IEC FT130'],
  ])('%j is %s', (text, name) => {
    expect(nameOf(text)).toBe(name);
  });
});

describe('a text that could be two frames is a problem naming both', () => {
  test.each([
    ['56', 'NEMA frame (56) and an IEC frame (56)'],
    ['225', 'NEMA frame (225) and an IEC frame (225)'],
    ['A200', 'old DIN name of flange FF165, or frame 200'],
    ['C160', 'old DIN name of flange FT130, or frame 160'],
    ['100L2', '100L-2 or 100L'],
    ['T184', 'write 184T, or leave the T out'],
    ['TC182', 'write 182TC, or leave the TC out'],
  ])('%s', (text, both) => {
    expect(nameOf(text)).toContain(both);
  });

  test('poles, and feet that both could have, do not decide it', () => {
    expect(nameOf('56', { poles: 2 })).toContain('NEMA 56" or "IEC 56"');
    expect(nameOf('56', { mounting: 'IM B3' })).toContain('NEMA 56" or "IEC 56"');
    expect(nameOf('56', { mounting: 'foot' })).toContain('NEMA 56" or "IEC 56"');
  });

  // A NEMA 56 with a face is a 56C (NEMA MG 1-2016 4.2.2).
  test('the system told, or a face that only one of them can have, decides it', () => {
    expect(nameOf('56', { system: 'NEMA' })).toBe('NEMA 56');
    expect(nameOf('56', { system: 'IEC' })).toBe('IEC 56');
    expect(nameOf('NEMA 56')).toBe('NEMA 56');
    expect(nameOf('IEC 56')).toBe('IEC 56');
    expect(nameOf('56', { mounting: 'IM B14' })).toBe('IEC 56');
    expect(nameOf('56C')).toBe('NEMA 56C');
  });
});

describe('what is no frame is refused, and the part that is wrong is named', () => {
  test.each([
    ['', 'is empty'],
    ['   ', 'is empty'],
    ['banana', 'is not a frame known here'],
    ['0', 'is not a frame known here'],
    ['99999', 'is not a frame known here'],
    ['1403T', 'is not a frame known here'],
    ['213TTC', '"TC" is not understood in the letters "TTC"'],
    ['324TSDS', '"S" is not understood in the letters "TSDS"'],
    ['184TQ', '"Q" is not understood'],
    ['56T', '56 has no T series'],
    ['143', 'write 143T'],
    ['184TH', 'only 48H and 56H exist'],
    ['254S', 'the short shaft, came with the T frames'],
    // 182U and 182 are one frame, and neither is shorter: found by any-text.test.ts.
    ['182US', 'the short shaft, came with the T frames'],
    ['182/7T9', 'is not a frame known here'],
    ['182/254T', 'not two lengths of one NEMA series'],
    ['90M', '90M is not an IEC frame: there is 90S, 90L'],
    ['90Q', 'is not understood after IEC frame 90'],
    ['IM 3001', 'names no frame'],
    ['IEC', 'names no frame'],
    ['FF999', 'FF999, which is not a flange'],
    ['184T FF215', 'FF215 is an IEC flange, 184T a NEMA frame'],
    ['112M 24', '24 mm is not a standard shaft of 112M'],
    ['112M 3-pole', 'the number of poles is even'],
    ['184T and many more words than any plate has room for in its frame field', 'is longer than any frame'],
  ])('%j: %s', (text, says) => {
    expect(nameOf(text)).toContain(says);
  });

  test('a system told that the text cannot be', () => {
    expect(nameOf('184TC', { system: 'IEC' })).toContain('is not a frame known here');
    expect(nameOf('NEMA 56', { system: 'IEC' })).toContain('says NEMA where IEC was told');
  });
});

describe('frame, mounting and poles that contradict each other are refused, all at once', () => {
  test.each<[string, FrameOptions, string[]]>([
    ['100L-4 B35', { mounting: 'IM B5' }, ['is not what the frame says: IM B35']],
    ['100L-4', { poles: 2 }, ['is not what the frame says: 4 poles']],
    [
      '100L-4 B35',
      { mounting: 'IM B3', poles: 6 },
      ['is not what the frame says: IM B35', 'is not what the frame says: 4'],
    ],
    ['112M FF215', { mounting: 'IM B14' }, ['does not go with flange FF215']],
    ['112M FF215', { mounting: 'IM B3' }, ['does not go with flange FF215']],
    ['184T', { mounting: 'IM B35' }, ['has a face and 184T names none']],
    ['184TC', { mounting: 'IM B3' }, ['has no face and 184TC names one']],
    ['FF165', { mounting: 'IM B5' }, ['FF165 is a flange alone']],
    ['112M', { poles: 3 }, ['must be an even number from 2 up']],
    ['banana', { mounting: 'upside down', poles: 3 }, ['not a frame', 'not a mounting', 'even number']],
  ])('%s with %j', (text, options, says) => {
    const read = readFrame(text, options);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems).toHaveLength(says.length);
    for (const part of says) expect(read.problems.map((one) => one.says).join('\n')).toContain(part);
  });

  // The contract of the frame command pairs an IM code with a NEMA frame.
  test('an IM code goes with a NEMA face, and tells whether there are feet', () => {
    const feetOf = (mounting: string) => {
      const read = readFrame('184TC', { mounting });
      return read.ok ? read.value.holding.feet : 'refused';
    };
    expect(feetOf('IM B35')).toBe(true);
    expect(feetOf('IM B14')).toBe(false);
    expect(feetOf('F-1')).toBe(true);
  });
});
