import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const root = path.join(import.meta.dirname, '..', '..');
const frame = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', 'scripts/frame.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
    timeout: 300_000,
  });
  return { status, stdout, lines: stderr.split('\n').filter((line) => line !== '') };
};

describe('npm run -s frame', () => {
  test('prints one JSON object and exits 0', () => {
    const { status, stdout, lines } = frame('225S', 'IM B35', '--poles', '4');
    expect([status, lines]).toEqual([0, []]);
    const answer = JSON.parse(stdout);
    expect(answer).toMatchObject({ frame: '225S', system: 'IEC', face: { name: 'FF400' } });
    expect(answer.dimensions.shaftDiameterMm.value).toBe(60);
  });

  test('the system told decides a text that is two frames', () => {
    const { status, stdout } = frame('56', '--system', 'nema');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ frame: '56', system: 'NEMA', face: null });
  });

  test.each([
    [['56'], [/^frame: "56" .*"NEMA 56" or "IEC 56"$/]],
    [[''], [/^frame: is empty/]],
    [[], [/^frame: is missing/]],
    [['184TC\nsecond line'], [/^frame: "184TC\\nsecond line" /]],
    [
      ['banana', 'sideways', '--poles', '3'],
      [/^frame: "banana" /, /^mounting: "sideways" /, /^poles: "3" must be/],
    ],
    [
      ['banana', '--poles', 'two', '--volts', '400'],
      [/^poles: "two" must be/, /^--volts: is not an option/, /^frame: /],
    ],
    [['112M', 'IM B3', 'IM B5'], [/^options: "IM B5" is one word too many$/]],
    [['112M', '--poles'], [/^poles: is missing after --poles$/]],
    [['112M', '--system', 'BS'], [/^system: "BS" must be NEMA or IEC$/]],
  ] as [string[], RegExp[]][])('%j: exit 2, nothing on standard output, one line per problem', (args, says) => {
    const { status, stdout, lines } = frame(...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(lines).toHaveLength(says.length);
    for (const one of says) expect(lines.some((line) => one.test(line))).toBe(true);
  });
});
