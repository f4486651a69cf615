import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = path.join(import.meta.dirname, '..', '..');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'plate-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const plate = (args: string[], input?: string | Buffer) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', 'scripts/plate.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
    timeout: 300_000,
    ...(input === undefined ? {} : { input }),
  });
  return { status, stdout, lines: stderr.split('\n').filter((line) => line !== '') };
};

const STAMPED = 'FRAME 184T HP 5 RPM 1750\nVOLTS 460 HZ 60 AMPS 6.6\nGribble 7\n';
const READ = {
  motor: { frame: '184T', poles: 4, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] },
  unread: ['Gribble 7'],
  problems: [],
};

describe('npm run -s plate', () => {
  test('a file: one JSON object, exit 0, though something was not read', () => {
    const file = path.join(folder, 'stamped.txt');
    writeFileSync(file, STAMPED);
    const { status, stdout, lines } = plate([file]);
    expect([status, lines]).toEqual([0, []]);
    expect(JSON.parse(stdout)).toEqual(READ);
  });

  test('standard input says the same', () => {
    const { status, stdout } = plate(['-'], STAMPED);
    expect([status, JSON.parse(stdout)]).toEqual([0, READ]);
  });

  test('what was not understood is part of the answer', () => {
    const { status, stdout } = plate(['-'], 'FRAME 184T POWER 5\n');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual({
      motor: { frame: '184T' },
      unread: [],
      problems: [{ path: 'ratings.0.kw', value: '5', says: 'could be 5 hp or 5 kW: write the unit' }],
    });
  });

  test.each([
    [['-'], '', /^\(whole\): is empty/],
    [['-'], 'x'.repeat(70_000), /^\(whole\): is longer than 64 kB/],
    [['-'], Buffer.from([0x46, 0x52, 0xff, 0xfe, 0x00]), /UTF-8/],
    [['nothing-here.txt'], undefined, /nothing-here\.txt/],
    [[], undefined, /plate FILE\.txt/],
    [['one.txt', 'two.txt'], undefined, /./],
  ] as [string[], string | Buffer | undefined, RegExp][])(
    '%# is refused: exit 2 and nothing on standard output',
    (args, input, says) => {
      const { status, stdout, lines } = plate(args, input);
      expect([status, stdout]).toEqual([2, '']);
      expect(lines.join('\n')).toMatch(says);
    },
  );
});
