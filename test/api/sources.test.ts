import fs from 'node:fs';
import { expect, test } from 'vitest';

const sources = ['app', 'lib'].flatMap((room) =>
  fs
    .readdirSync(room, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('db/generated'))
    .map((file) => ({ file: `${room}/${file}`, text: fs.readFileSync(`${room}/${file}`, 'utf8') })),
);

test.each([
  ['raw HTML', /dangerouslySetInnerHTML|\.innerHTML\b|insertAdjacentHTML|document\.write/],
  ['SQL built from strings', /\$(queryRaw|executeRaw)Unsafe|Prisma\.raw\(/],
  ['code from text', /\beval\(|new Function\(/],
])('S2 there is no %s in the program', (_name, pattern) => {
  expect(sources.filter(({ text }) => pattern.test(text)).map(({ file }) => file)).toEqual([]);
  expect(sources.length).toBeGreaterThan(100);
});

test('S31 every package is pinned to one version, and the lock file names no registry', () => {
  const { dependencies, devDependencies, optionalDependencies } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
  const loose = Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(String(version)),
  );
  expect(loose).toEqual([]);
  const lock = fs.readFileSync('package-lock.json', 'utf8');
  expect(lock).not.toContain('"resolved"');
  expect(lock.match(/https?:\/\/[^"]*\.tgz/g)).toBeNull();
});

test('S8 S29 the build tells neither its maker nor its sources', () => {
  const config = fs.readFileSync('next.config.ts', 'utf8');
  expect(config).toMatch(/poweredByHeader: false/);
  expect(config).not.toMatch(/productionBrowserSourceMaps: true/);
});
