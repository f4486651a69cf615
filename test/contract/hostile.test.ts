import { describe, expect, test } from 'vitest';
import { asked } from './asked';
import { changed, example, inside, type Json, keysOf, type Path } from './example';

/** Everything a text may stand for in the contract, and everything else too. */
const whole = changed(example(), ['set', 'seat', 'face'], 'FF165');
const paths: Path[] = [
  ...keysOf(whole),
  ['set', 'needs', 0],
  ['candidates', 0, 'has', 0],
  ['set', 'failed', 'ratings', 0],
];
const textPaths = paths.filter((path) => typeof path.reduce<Json | undefined>(inside, whole) === 'string');
const free = ['tag', 'id', 'frame', 'mounting', 'enclosure', 'face'];

const MOST_ANSWERED = 20_000;
const judged = (path: Path, value: Json) => asked(JSON.stringify(changed(whole, path, value)));

test('the texts of the contract are met', () => {
  const keys = new Set(textPaths.map((path) => path.at(-1)));
  for (const key of [...free, 'ip', 'duty', 'asOf', 'design', 'codeLetter', 'connection']) expect(keys).toContain(key);
});

describe('a text of 10 MB', () => {
  const large = 'A1'.repeat(5_000_000);
  test('is refused at every key, in few words', () => {
    for (const path of textPaths) {
      const answer = judged(path, large);
      expect(answer.ok, path.join('.')).toBe(false);
      expect(JSON.stringify(answer).length).toBeLessThan(1_000);
      if (!answer.ok) expect(answer.problems.map((one) => one.path)).toEqual([path.join('.')]);
    }
  });

  test('as a key is told in few words', () => {
    const answer = judged(['set', large], 1);
    expect(answer.ok).toBe(false);
    expect(JSON.stringify(answer).length).toBeLessThan(1_000);
  });

  test('of white space around a short one is no longer than the short one', () => {
    expect(judged(['set', 'tag'], `${' '.repeat(5_000_000)}P-101`)).toEqual(judged(['set', 'tag'], 'P-101'));
  });
});

/** What is typed by nobody, or copied with something that is not seen. */
const ODD = {
  'a bell': 'P\u0007101',
  'a line break': 'P\r\n101',
  'a nought': 'P\u0000101',
  'the end of a terminal’s title': '\u001b]0;x\u0007',
  'a separator of lines': 'P\u2028101',
  'right to left': '\u202e101-P',
  'half a pair': 'P\ud800',
  'half a pair before a letter': '\udc00P',
  'a tag of HTML': '<script>alert(1)</script>',
  'a formula': '=1+1',
  'a prototype': '__proto__',
  'a flag': '\u{1f3f4}',
  '8 000 marks on one letter': `e${'\u0301'.repeat(8_000)}`,
};

describe.each(Object.entries(ODD))('%s', (_, odd) => {
  test('at every key is refused by its path, or judged as a text that says nothing', () => {
    for (const path of textPaths) {
      const answer = judged(path, odd);
      const text = JSON.stringify(answer);
      expect(text.length, path.join('.')).toBeLessThan(MOST_ANSWERED);
      if (answer.ok) expect(free).toContain(path.at(-1));
      else
        for (const { path: at, value, says } of answer.problems) {
          expect(at).toBe(path.join('.'));
          expect(`${value}${says}`).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}]/u);
        }
    }
  });
});

test('control characters and halves of pairs stand in no name', () => {
  for (const key of [
    ['set', 'tag'],
    ['candidates', 0, 'id'],
    ['candidates', 0, 'frame'],
    ['set', 'seat', 'face'],
  ])
    for (const odd of ['P\u0007101', 'P\u2028101', 'P\ud800', '\udc00P'])
      expect(judged(key, odd)).toMatchObject({ ok: false, problems: [{ says: 'must be one line of plain text' }] });
});

describe('nesting without end', () => {
  const depth = 300_000;
  const deep = `${'['.repeat(depth)}${']'.repeat(depth)}`;
  const text = JSON.stringify(whole);
  test.each([
    ['in place of the whole', deep],
    ['in place of a figure', text.replace('"volts":480', `"volts":${deep}`)],
    ['in place of a text', text.replace('"P-101"', deep)],
    ['in place of a group', text.replace('"quill":{', `"quill":${deep},"was":{`)],
    ['in place of a candidate', text.replace('"candidates":[', `"candidates":[${deep},`)],
    ['in a key not known', text.replace('"asOf"', `"a":${deep},"asOf"`)],
    ['in keys', `${'{"set":'.repeat(depth)}1${'}'.repeat(depth)}`],
    ['never closed', '{"set":'.repeat(depth)],
  ])('%s is refused', (_, text) => {
    const answer = asked(text);
    expect(answer.ok).toBe(false);
    expect(JSON.stringify(answer).length).toBeLessThan(1_000);
  });
});

test('a great many problems are told as a thousand, and the rest counted', () => {
  const keys = Object.fromEntries(Array.from({ length: 100_000 }, (_, i) => [`k${i}`, 1]));
  for (const odd of [
    changed(whole, ['set', 'base'], keys),
    changed(
      whole,
      ['candidates'],
      Array.from({ length: 10_000 }, () => 1),
    ),
  ]) {
    const answer = asked(JSON.stringify(odd));
    if (answer.ok) throw new Error('taken, though it should be refused');
    expect(answer.problems).toHaveLength(1_001);
    expect(answer.problems.at(-1)?.says).toMatch(/^has 9\d{3,4} more problems: /);
  }
});
