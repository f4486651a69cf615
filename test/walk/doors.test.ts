import fs from 'node:fs';
import { expect, test } from 'vitest';
import { ACTION_DOORS } from './actions';
import { PAGE_DOORS } from './pages';
import { ROUTE_DOORS } from './routes';

/** What the build would make of the tree: whatever is not in a table of doors fails here, before anybody walks. */
const files = fs.readdirSync('app', { recursive: true, encoding: 'utf8' }).sort();
const source = (file: string) => fs.readFileSync(`app/${file}`, 'utf8');
const folder = (file: string) => file.split('/').slice(0, -1).join('/');

test('S24 every page has a door, and every door a page', () => {
  const pages = files.filter((file) => /(^|\/)page\.tsx$/.test(file)).map(folder);
  expect(PAGE_DOORS.map(({ page }) => page).sort()).toEqual(pages.sort());
});

test('S24 every method of every route has a door', () => {
  const routes = files
    .filter((file) => file.endsWith('/route.ts'))
    .flatMap((file) => {
      const text = source(file);
      const methods = [...text.matchAll(/export (?:const|async function|function) (GET|POST|PUT|PATCH|DELETE)\b/g)];
      const unpacked = /export const \{([^}]*)\}/.exec(text)?.[1]?.split(',') ?? [];
      return [...methods.map(([, method]) => method), ...unpacked.map((name) => name.trim())].map(
        (method) => `${method} ${folder(file)}`,
      );
    });
  expect(ROUTE_DOORS.map(({ route }) => route).sort()).toEqual(routes.sort());
});

test('S24 every server action has a door', () => {
  const actions = files
    .filter((file) => /\.tsx?$/.test(file) && /^['"]use server['"]/m.test(source(file)))
    .flatMap((file) =>
      [...source(file).matchAll(/export (?:const|async function) (\w+)/g)].map(([, name]) => `app/${file} ${name}`),
    );
  expect(ACTION_DOORS.map(({ action }) => action).sort()).toEqual(actions.sort());
  // Written within a component it would escape the list.
  const within = files.filter((file) => /\.tsx?$/.test(file) && /^\s+['"]use server['"]/m.test(source(file)));
  expect(within).toEqual([]);
});

test('S27 no page, route or action asks the database itself', () => {
  const askers = files.filter((file) => /\.tsx?$/.test(file) && /from '@\/lib\/db\/client'/.test(source(file)));
  expect(askers).toEqual(['readyz/route.ts']); // whether the database answers is what it is asked
});
