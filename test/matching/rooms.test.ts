import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { criteria } from '@/lib/matching/criteria';
import { CRITERIA } from '@/lib/matching/finding';

const root = path.resolve(import.meta.dirname, '../..');
const folders = path.join(root, 'lib/matching/criteria');

/** The rows of the criteria table in DEVELOPERS.md, as "folder/id". */
const tabled = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8')
  .split(/^## /m)
  .filter((part) => part.startsWith('Criteria\n'))
  .flatMap((part) => [...part.matchAll(/^\| ([a-z-]+) +\| ([a-z]+) +\| [^|]+\?[^|]* \|$/gm)])
  .map(([, id, folder]) => `${folder}/${id}`);

/** The files that hold a criterion, as "folder/id". */
const filed = readdirSync(folders, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => readdirSync(path.join(folders, name)).map((file) => `${name}/${file.replace(/\.ts$/, '')}`));

const idOf = (place: string) => place.slice(place.indexOf('/') + 1);
const camel = (id: string) => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

test('the table in DEVELOPERS.md has every criterion id once, in the order of CRITERIA', () => {
  expect(tabled.map(idOf)).toEqual([...CRITERIA]);
});

test('the list asks every criterion once, in the order of CRITERIA', () => {
  expect(criteria.map(([id]) => id)).toEqual([...CRITERIA]);
});

test('every criterion of the table has its file in the folder the table names, and there is no other file', () => {
  expect([...filed].sort()).toEqual([...tabled].sort());
});

test('each file exports its criterion under its own name, and the list holds that very function', async () => {
  const listed = new Map(criteria);
  const wrong: string[] = [];
  for (const place of filed) {
    const of: Record<string, unknown> = await import(path.join(folders, `${place}.ts`));
    const id = CRITERIA.find((one) => one === idOf(place));
    const ask = of[camel(idOf(place))];
    if (Object.keys(of).length !== 1 || typeof ask !== 'function') wrong.push(`${place}: exports ${Object.keys(of)}`);
    else if (id === undefined || listed.get(id) !== ask) wrong.push(`${place}: not in the list`);
  }
  expect(wrong).toEqual([]);
});

test('every criterion has its test file', () => {
  expect(filed.filter((place) => !existsSync(path.join(root, `test/matching/${place}.test.ts`)))).toEqual([]);
});
