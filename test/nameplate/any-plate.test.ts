import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlate } from '@/lib/nameplate/read-plate';
import { motor } from '@/lib/plant/motor';
import { iecPlates } from './plates-iec';
import { nemaPlates } from './plates-nema';

const plates = [...nemaPlates, ...iecPlates];

/** Words of plates in any order, and any text at all. */
const words = plates.flatMap(({ text }) => text.split(/\s+/)).filter((word) => word !== '');
const near = fc
  .array(fc.oneof(fc.constantFrom(...words), fc.constantFrom('/', '-', '½', 'x', '0', '1,5')), { maxLength: 40 })
  .chain((parts) =>
    fc
      .array(fc.constantFrom(' ', '  ', '\n', '\t', '; ', ''), { minLength: parts.length, maxLength: parts.length })
      .map((gaps) => parts.map((part, i) => part + gaps[i]).join('')),
  );
const anyText = fc.oneof(near, fc.string({ maxLength: 300 }), fc.string({ unit: 'grapheme', maxLength: 200 }));

/** Lines that nothing on a plate could be. */
const nonsense = fc
  .array(fc.constantFrom('Qzx', 'gribble', 'Wobbleford', 'Öxkø', 'vvvv'), { minLength: 1, maxLength: 4 })
  .map((parts) => parts.join(' '));

/** Stands alone on its lines: no table, whose rows need their headings. */
const ofLines = plates.filter(({ text }) => !/^V +Hz/m.test(text));

describe('whatever is stamped', () => {
  test('what is read is a motor of the plant, and every problem says where and what', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { motor: read, problems } = readPlate(text);
        expect(motor.safeParse({ ...read, id: 'M-1' }).error?.issues ?? []).toEqual([]);
        for (const { path, says } of problems) expect(`${path}: ${says}`).toMatch(/^\S+: \S/);
      }),
      { numRuns: 1_500 },
    );
  });

  test('a key that is named by a problem as two things is not in the motor', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { motor: read, problems } = readPlate(text);
        for (const { path, says } of problems)
          if (says.endsWith('which one holds?') && !path.includes('.')) expect(read).not.toHaveProperty(path);
      }),
      { numRuns: 1_500 },
    );
  });

  test('the order of the lines changes nothing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ofLines).chain(({ text }) => {
          const lines = text.split('\n');
          return fc.tuple(
            fc.constant(text),
            fc.shuffledSubarray(lines, { minLength: lines.length, maxLength: lines.length }),
          );
        }),
        ([text, lines]) => {
          const [first, again] = [readPlate(text), readPlate(lines.join('\n'))];
          expect(again.motor).toEqual(first.motor);
          expect(again.unread.toSorted()).toEqual(first.unread.toSorted());
          expect(again.problems.map(({ path }) => path).sort()).toEqual(first.problems.map(({ path }) => path).sort());
        },
      ),
    );
  });

  test('a line of nonsense is kept word for word and changes nothing else', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ofLines), nonsense, fc.boolean(), ({ text }, line, isFirst) => {
        const plain = readPlate(text);
        const { motor: read, unread, problems } = readPlate(isFirst ? `${line}\n${text}` : `${text}\n${line}`);
        expect(unread.join(' ')).toContain(line);
        expect(read).toEqual(plain.motor);
        expect(problems).toHaveLength(plain.problems.length);
      }),
    );
  });

  test('lines end as they may, and a byte order mark is no letter', () => {
    for (const { text } of plates) {
      expect(readPlate(text.replaceAll('\n', '\r\n'))).toEqual(readPlate(text));
      expect(readPlate(`\uFEFF${text}`)).toEqual(readPlate(text));
    }
  });
});

describe('what is no plate', () => {
  test.each([
    ['', 'is empty: must be the text of a nameplate'],
    [' \n\t ', 'is empty: must be the text of a nameplate'],
    ['HP 5 '.repeat(20_000), 'is longer than 64 kB: no nameplate is'],
  ])('%#', (text, says) => {
    expect(readPlate(text)).toEqual({ motor: {}, unread: [], problems: [{ path: '(whole)', value: null, says }] });
  });

  // A guard against patterns that go back over and over, not a measure of speed: each of them ends within seconds.
  test.each([
    '1',
    '9,',
    '1/',
    '1-',
    ' ',
    'A',
    '\n',
    'Δ/',
    'V 1 ',
    'FRAME ',
    '230/460 V ',
    'IM B3/',
    'CLASS I DIV ',
    'EX ',
    '1 2/',
    'a|',
    '(',
    '½',
    'S1 ',
    '°',
  ])('S5 64 kB of %j end', (piece) => {
    const text = piece.repeat(Math.floor((64 * 1024) / piece.length));
    expect(Object.keys(readPlate(text))).toEqual(['motor', 'unread', 'problems']);
  });
});
