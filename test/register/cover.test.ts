import { beforeEach, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import type { Edit } from '@/lib/fields/state';
import { assess } from '@/lib/matching/assess';
import { changeThings } from '@/lib/register/commands/change-things';
import { exportCoverOfMotors, exportCoverOfSets } from '@/lib/register/commands/export-cover';
import { coverOfSite } from '@/lib/register/kept-plant/cover-now';
import { coverMatrix } from '@/lib/register/queries/cover-matrix';
import { coverOfMotors } from '@/lib/register/queries/cover-of-motors';
import { coverOfSets } from '@/lib/register/queries/cover-of-sets';
import { colleague, got, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const ALL = { q: null, areaId: null, criticality: null, state: null, sort: 'tag', isDown: false } as const;
const WHOLE = { page: 1, perPage: 100 };
const edit = async (thing: 'set' | 'motor', name: string, told: Edit) => {
  const id = got(thing === 'set' ? here.sets : here.motors, name);
  const done = await changeThings(here.actor, [{ thing, id, version: null, edit: told }]);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
};

/** For each set the shelf motors that could go in, as the list counts them. */
const counted = async () => {
  const { lines } = await coverOfSets(here.actor, ALL, WHOLE);
  return Object.fromEntries(lines.map(({ of, counts }) => [of.tag, counts]));
};
/** The same by judging every pair anew. */
async function judged() {
  const { plant } = await coverOfSite(here.actor.siteId);
  const shelf = [...plant.motors.values()].filter(({ place }) => place === 'on-shelf').map(({ motor }) => motor);
  return Object.fromEntries(
    [...plant.sets.values()].map(({ tag, set }) => {
      const { results } = assess({ set, candidates: shelf, asOf: null }, plant.settings);
      const count = (verdict: string) => results.filter((one) => one.verdict === verdict).length;
      return [
        tag,
        {
          'straight-swap': count('straight-swap'),
          'swap-with-work': count('swap-with-work'),
          'check-first': count('check-first'),
        },
      ];
    }),
  );
}

test('the cover of a site is that of its sets in use and the motors on its shelves', async () => {
  expect(await counted()).toEqual(await judged());
  const { lines, counts } = await coverOfSets(here.actor, ALL, WHOLE);
  expect(lines.some(({ all }) => all > 0)).toBe(true);
  expect(counts.reduce((sum, { sets }) => sum + sets, 0)).toBe(lines.length);
});

test('what anybody changed is in it when it is asked for next', async () => {
  const before = await counted();
  await edit('set', 'P-101', { 'supply.volts': 2_300 });
  const after = await counted();
  expect(after).toEqual(await judged());
  expect(after['P-101']).not.toEqual(before['P-101']);
  await edit('set', 'P-101', { 'supply.volts': 460 });
  await edit('motor', 'M-7', { frame: '256T' });
  expect(await counted()).toEqual(await judged());
});

test('a motor used tonight leaves its sets with one motor less', async () => {
  const { lines, used } = await coverOfMotors(here.actor, { q: null, state: null }, 'M-7', WHOLE);
  expect(lines.map(({ motor }) => motor.id)).toContain('M-7');
  const { lines: sets } = await coverOfSets(here.actor, ALL, WHOLE);
  expect(used?.sets.length).toBeGreaterThan(0);
  for (const { of, left } of used?.sets ?? [])
    expect(left).toBe((sets.find((one) => one.of.setId === of.setId)?.all ?? 0) - 1);
});

test('it is found by words, and by what is left', async () => {
  const tags = async (filter: object) =>
    (await coverOfSets(here.actor, { ...ALL, ...filter }, WHOLE)).lines.map(({ of }) => of.tag);
  expect(await tags({ q: 'p101' })).toEqual(['P-101']);
  expect(await tags({ q: 'nothing like it' })).toEqual([]);
  await edit('set', 'P-101', { 'supply.volts': 2_300 });
  expect(await tags({ state: 'none' })).toContain('P-101');
});

test('the matrix holds the sets asked for, as often as the list counts them, and tells what it leaves out', async () => {
  const all = await coverMatrix(here.actor, ALL, { rows: 100, columns: 100 });
  const { lines } = await coverOfSets(here.actor, ALL, WHOLE);
  const pairs = all.rows.flatMap(({ cells }) => cells.map((cell) => cell?.pairs ?? 0));
  expect(pairs.reduce((sum, one) => sum + one, 0)).toBe(lines.reduce((sum, one) => sum + one.all, 0));
  expect(all.sets).toBe(lines.length);
  expect(all.left).toEqual({ rows: 0, sets: 0, columns: 0, motors: 0 });
  const one = await coverMatrix(here.actor, { ...ALL, q: 'p101' }, { rows: 100, columns: 100 });
  expect(one.rows.flatMap(({ sets }) => sets.map(({ set }) => set.tag))).toEqual(['P-101']);
  await edit('set', 'P-101', { 'supply.volts': 2_300 });
  const bare = await coverMatrix(here.actor, { ...ALL, state: 'none' }, { rows: 0, columns: 100 });
  expect(bare.left.sets).toBe(bare.sets);
  expect(bare.sets).toBeGreaterThan(0);
});

test('its files are in the audit, and only for the desk', async () => {
  const rows = await exportCoverOfSets(here.actor, ALL);
  await exportCoverOfMotors(here.actor, { q: null, state: null });
  const entries = await db.auditEntry.findMany({
    where: { siteId: here.actor.siteId, action: 'register.export' },
    orderBy: { at: 'asc' },
  });
  expect(entries.map(({ after }) => after)).toMatchObject([
    { kind: 'cover of sets', rows: rows.length },
    { kind: 'cover of shelf motors' },
  ]);
  const technician = await colleague(here.actor.siteId, 'technician', 'Bo Lind');
  await expect(exportCoverOfSets(technician, ALL)).rejects.toThrow();
});

test('another site has its own', async () => {
  const there = await smallPlant();
  const { plant } = await coverOfSite(there.actor.siteId);
  expect(plant.siteId).toBe(there.actor.siteId);
  for (const id of (await coverOfSite(here.actor.siteId)).cover.sets.keys()) expect(plant.sets.has(id)).toBe(false);
});
