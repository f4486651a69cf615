import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { WAYS } from '@/lib/review/cure/ways';
import { REVIEW_RULES } from '@/lib/review/finding';
import { reviewRules } from '@/lib/review/rules';

const root = path.resolve(import.meta.dirname, '../..');
const room = path.join(root, 'lib/review');
const FOLDERS = ['load', 'supply', 'place', 'mount'] as const;

/** The rows of the table of review rules in DEVELOPERS.md, as "folder/id". */
const tabled = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8')
  .split(/^## /m)
  .filter((part) => part.startsWith('Review rules\n'))
  .flatMap((part) => [
    ...part.matchAll(/^\| ([a-z-]+) +\| (load|supply|place|mount) +\| [^|]+\?[^|]* \| [^|]*\S *\|$/gm),
  ])
  .map(([, id, folder]) => `${folder}/${id}`);

const filed = FOLDERS.flatMap((folder) =>
  readdirSync(path.join(room, folder)).map((file) => `${folder}/${file.replace(/\.ts$/, '')}`),
);
const idOf = (place: string) => place.slice(place.indexOf('/') + 1);
const camel = (id: string) => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const listed = new Map<string, unknown>(reviewRules);

test('the table in DEVELOPERS.md has every rule once, in the order of the list', () => {
  expect(tabled.map(idOf)).toEqual([...REVIEW_RULES]);
});

test('the list asks every rule once, in the order of the ids, and each has its ways to be put right', () => {
  expect([...listed.keys()]).toEqual([...REVIEW_RULES]);
  expect(Object.keys(WAYS)).toEqual([...REVIEW_RULES]);
});

test('every rule has its file in the folder the table names, and its test; there is no other file', () => {
  expect([...filed].sort()).toEqual([...tabled].sort());
  expect(filed.filter((place) => !existsSync(path.join(root, `test/review/${place}.test.ts`)))).toEqual([]);
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
