import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { answered, refused } from './asked';
import { changed, example, printed } from './example';

const root = path.join(import.meta.dirname, '..', '..');
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'assess-'));
afterAll(() => fs.rmSync(folder, { recursive: true }));

const file = (name: string, content: string | Buffer): string => {
  const at = path.join(folder, name);
  fs.writeFileSync(at, content);
  return at;
};

/** As `npm run -s assess -- ARGS` runs it. */
function command(args: string[], input: string | Buffer = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', 'scripts/assess.ts', ...args], {
    cwd: root,
    input,
    encoding: 'utf8',
    timeout: 300_000,
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, stdout, stderr };
}

describe('npm run -s assess', () => {
  test('the script is what package.json runs', () => {
    const { scripts } = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8'));
    expect(scripts.assess).toBe('node --import tsx scripts/assess.ts');
  });

  test('a file: one JSON object, exit 0, nothing on standard error', () => {
    const { status, stdout, stderr } = command([file('case.json', JSON.stringify(printed()))]);
    expect([status, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(answered(printed()))));
  });

  test('- is standard input; a mark of byte order before it is no fault', () => {
    const { status, stdout, stderr } = command(['-'], `\uFEFF${JSON.stringify(example())}`);
    expect([status, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(answered(example()))));
  });

  test('bad input: exit 2, nothing on standard output, a line per problem with its path', () => {
    let bad = changed(example(), ['set', 'mounting'], 'wall\nmount');
    bad = changed(bad, ['set', 'line\u2028break'], 1);
    bad = changed(bad, ['candidates', 0, 'ratings', 0, 'kw'], 3.7);
    const { status, stdout, stderr } = command(['-'], JSON.stringify(bad));
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toBe(
      [
        'set.mounting: must be one of foot, face or foot-and-face (got "wall\\nmount")',
        'set.line break: is not a key known here',
        'candidates.0.ratings.0.kw: give hp or kw, not both (got 3.7)',
        '',
      ].join('\n'),
    );
    expect(refused(bad)).toHaveLength(3);
  });

  const nowhere = path.join(folder, 'nowhere.json');
  const utf16 = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(JSON.stringify(example()), 'utf16le')]);
  test.each<[string, string[], string]>([
    ['no file named', [], '(command): takes one argument: assess FILE.json (or - for standard input)'],
    ['two files named', ['a', 'b'], '(command): takes one argument: assess FILE.json (or - for standard input)'],
    ['a file that is not there', [nowhere], `${nowhere}: no such file`],
    ['a folder', [folder], `${folder}: is a folder, not a file`],
    ['an empty file', [file('empty', '')], '(whole): is empty: must be JSON'],
    ['UTF-16', [file('utf16', utf16)], `${path.join(folder, 'utf16')}: is not UTF-8 text`],
    [
      'more than 32 MB',
      [file('large', Buffer.alloc(33 * 1024 * 1024, ' '))],
      `${path.join(folder, 'large')}: is larger than 32 MB`,
    ],
    [
      'what is no JSON',
      [file('bad.json', '{\n  "set": }')],
      '(whole): is not JSON: line 2, column 10 must be a value (found "}")',
    ],
  ])('%s', (_, args, line) => {
    const { status, stdout, stderr } = command(args);
    expect([status, stdout, stderr]).toEqual([2, '', `${line}\n`]);
  });

  test('20 MB with one text in it, and nesting without end: a short answer', () => {
    const large = changed(example(), ['set', 'tag'], 'x'.repeat(20_000_000));
    const deep = `{"candidates":${'['.repeat(500_000)}${']'.repeat(500_000)}}`;
    for (const input of [JSON.stringify(large), deep]) {
      const { status, stdout, stderr } = command(['-'], input);
      expect([status, stdout]).toEqual([2, '']);
      expect(stderr.length).toBeLessThan(400);
    }
  });
});
