import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { MOTOR_RULES, RULES, SET_RULES, SITE_RULES } from '@/lib/plausibility/doubt';
import { motorRules, setRules, siteRules } from '@/lib/plausibility/rules';

const root = path.resolve(import.meta.dirname, '../..');
const room = path.join(root, 'lib/plausibility');

/** The rows of the table of rules in DEVELOPERS.md, as "folder/id", with their sources. */
const tabled = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8')
  .split(/^## /m)
  .filter((part) => part.startsWith('Plausibility rules\n'))
  .flatMap((part) => [...part.matchAll(/^\| ([a-z-]+) +\| (motor|set|site) +\| [^|]+\?[^|]* \| ([^|]*\S) *\|$/gm)])
  .map(([, id, folder, source]) => ({ place: `${folder}/${id}`, source }));

/** The files that hold a rule, as "folder/id". */
const filed = ['motor', 'set', 'site'].flatMap((folder) => {
  const files = existsSync(path.join(room, folder)) ? readdirSync(path.join(room, folder)) : [];
  return files.map((file) => `${folder}/${file.replace(/\.ts$/, '')}`);
});
const named = [
  ...MOTOR_RULES.map((id) => `motor/${id}`),
  ...SET_RULES.map((id) => `set/${id}`),
  ...SITE_RULES.map((id) => `site/${id}`),
];

const idOf = (place: string) => place.slice(place.indexOf('/') + 1);
const camel = (id: string) => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const listed = new Map<string, unknown>([...motorRules, ...setRules, ...siteRules]);

test('the table in DEVELOPERS.md has every rule once, in the order of the lists', () => {
  expect(tabled.map(({ place }) => place)).toEqual(named);
});

test('the lists ask every rule once, in their order', () => {
  expect([...listed.keys()]).toEqual([...RULES]);
});

test('every rule of the table has its file in the folder the table names, and there is no other file', () => {
  expect([...filed].sort()).toEqual(tabled.map(({ place }) => place).sort());
});

test('each file exports its rule under its own name, and the list holds that very function', async () => {
  const wrong: string[] = [];
  for (const place of filed) {
    const of: Record<string, unknown> = await import(path.join(room, `${place}.ts`));
    const ask = of[camel(idOf(place))];
    if (Object.keys(of).length !== 1 || typeof ask !== 'function') wrong.push(`${place}: exports ${Object.keys(of)}`);
    else if (listed.get(idOf(place)) !== ask) wrong.push(`${place}: not in the list`);
  }
  expect(wrong).toEqual([]);
});

test('every rule has its test file', () => {
  expect(filed.filter((place) => !existsSync(path.join(root, `test/plausibility/${place}.test.ts`)))).toEqual([]);
});
