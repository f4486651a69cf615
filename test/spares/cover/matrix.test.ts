import { expect, test } from 'vitest';
import { defaultSettings } from '@/lib/matching/default-settings';
import { VERDICTS } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { byCluster, clusterOfMotor, clusterOfSet } from '@/lib/spares/cover/cluster';
import { coverOf } from '@/lib/spares/cover/cover';
import { matrixOf } from '@/lib/spares/cover/matrix';
import { matrixPart } from '@/lib/spares/cover/matrix-part';
import { setStanding } from '@/lib/spares/cover/set-standing';
import { motor, set } from '../../matching/easy';
import { somePlant } from './plants';

const { sets, shelf } = somePlant({ seed: 13, sets: 90, spares: 120 });
const cover = coverOf(sets, shelf, defaultSettings);
const matrix = matrixOf(cover, cover.sets.values());
const offered = [...cover.kinds.values()].flat();

test('every set stands in one row and every shelf motor in one column, of its own cluster', () => {
  const inRows = matrix.rows.flatMap(({ sets }) => sets.map(({ setId }) => setId));
  expect(inRows.sort()).toEqual([...sets.keys()].sort());
  const ids = (motors: readonly Motor[]) => motors.map(({ id }) => id).sort();
  expect(ids(matrix.columns.flatMap(({ motors }) => motors))).toEqual(ids(offered));
  for (const { cluster, sets } of matrix.rows) for (const one of sets) expect(clusterOfSet(one.set)).toEqual(cluster);
  for (const { cluster, motors } of matrix.columns)
    for (const one of motors) expect(clusterOfMotor(one)).toEqual(cluster);
  const texts = [matrix.rows, matrix.columns].map((all) => all.map(({ cluster }) => JSON.stringify(cluster)));
  for (const all of texts) expect(new Set(all).size).toBe(all.length);
  expect(matrix.rows.length).toBeGreaterThan(5);
  expect(matrix.columns.length).toBeGreaterThan(5);
});

test('a cell is its pairs: their number, the motors in them, and the best of their verdicts', () => {
  // Of the cover told pair by pair, without clusters, once for each cell.
  let cells = 0;
  for (const row of matrix.rows) {
    for (const [i, column] of matrix.columns.entries()) {
      const pairs = row.sets.flatMap(({ serves }) =>
        serves.flatMap(({ kind, fit }) => {
          const motors = (cover.kinds.get(kind) ?? []).filter((one) => column.motors.includes(one));
          return motors.map(({ id }) => ({ id, verdict: fit.verdict }));
        }),
      );
      const cell = row.cells[i];
      if (pairs.length === 0) {
        expect(cell).toBeNull();
        continue;
      }
      cells += 1;
      expect(cell).toEqual({
        best: VERDICTS.find((verdict) => pairs.some((one) => one.verdict === verdict)),
        motors: new Set(pairs.map(({ id }) => id)).size,
        pairs: pairs.length,
      });
    }
  }
  expect(cells).toBeGreaterThan(20);
});

test('rows and columns come to what the list of the sets counts', () => {
  for (const row of matrix.rows) {
    const standings = row.sets.map((one) => setStanding(cover, one));
    expect(row.cells.reduce((n, cell) => n + (cell?.pairs ?? 0), 0)).toBe(standings.reduce((n, { all }) => n + all, 0));
    expect(row.bare).toBe(standings.filter(({ all }) => all === 0).length);
  }
  for (const [i, { pairs }] of matrix.columns.entries())
    expect(pairs).toBe(matrix.rows.reduce((n, { cells }) => n + (cells[i]?.pairs ?? 0), 0));
});

test('its order is that of the clusters, whatever the order it was given', () => {
  const turned = coverOf(new Map([...sets].reverse()), [...shelf].reverse(), defaultSettings);
  const told = ({ rows, columns }: typeof matrix) => ({
    rows: rows.map(({ cluster, frames, sets, cells }) => ({ cluster, frames, sets: sets.length, cells })),
    columns: columns.map(({ cluster, motors }) => ({ cluster, motors: motors.length })),
  });
  expect(told(matrixOf(turned, turned.sets.values()))).toEqual(told(matrix));
  for (const all of [matrix.rows, matrix.columns])
    for (const [i, { cluster }] of all.slice(1).entries())
      expect(byCluster(all[i]?.cluster ?? cluster, cluster)).toBeLessThan(0);
});

const CLUSTERS: readonly [string, PumpSet | Motor, object][] = [
  // NEMA MG 1 4.2.1: D of a 184T is 18 / 4 = 4.5 in, which is 114.3 mm.
  [
    'a set by its failed motor',
    set(),
    { system: 'NEMA', shaftHeightMm: 114, phases: 3, supplies: [{ volts: 460, hertz: 60 }] },
  ],
  ['a set by the height measured there', set({ seat: { shaftHeightMm: 132 } }), { shaftHeightMm: 132, system: 'NEMA' }],
  [
    'a set of which nothing is told',
    set({ failed: null, supply: { volts: null, hertz: null, phases: null } }),
    { system: null, shaftHeightMm: null, phases: null, supplies: [{ volts: null, hertz: null }] },
  ],
  // IEC 60072-1: the number of the frame is its shaft height in mm.
  ['a motor by its frame', motor({ frame: '132S' }), { system: 'IEC', shaftHeightMm: 132 }],
  [
    'a motor by each of its ratings once',
    motor({
      ratings: [
        { volts: 460, hertz: 60, kw: 4 },
        { volts: 690, hertz: 50, kw: 4 },
        { volts: 400, hertz: 50, kw: 4 },
        { volts: 460, hertz: 60, kw: 3 },
      ],
    }),
    {
      supplies: [
        { volts: 400, hertz: 50 },
        { volts: 690, hertz: 50 },
        { volts: 460, hertz: 60 },
      ],
    },
  ],
  ['a motor whose plate was not read', motor({ frame: null, ratings: [] }), { shaftHeightMm: null, supplies: [] }],
];

test.each(CLUSTERS)('%s', (_, thing, expected) => {
  expect('tag' in thing ? clusterOfSet(thing) : clusterOfMotor(thing)).toMatchObject(expected);
});

test('a part of it keeps the greatest, in their order, and tells what is left out', () => {
  const part = matrixPart(matrix, { rows: 4, columns: 3 });
  expect([part.rows.length, part.columns.length]).toEqual([4, 3]);
  const least = Math.min(...part.rows.map(({ sets }) => sets.length));
  const kept = part.rows.map(({ cluster }) => cluster);
  const others = matrix.rows.filter(({ cluster }) => !kept.includes(cluster));
  for (const { sets } of others) expect(sets.length).toBeLessThanOrEqual(least);
  expect(matrix.rows.map(({ cluster }) => cluster).filter((one) => kept.includes(one))).toEqual(kept);
  for (const row of part.rows) {
    const whole = matrix.rows.find(({ cluster }) => cluster === row.cluster);
    for (const [i, { cluster }] of part.columns.entries())
      expect(row.cells[i]).toBe(whole?.cells[matrix.columns.findIndex((one) => one.cluster === cluster)]);
  }
  expect(part.left).toEqual({
    rows: matrix.rows.length - 4,
    sets: sets.size - part.rows.reduce((n, one) => n + one.sets.length, 0),
    columns: matrix.columns.length - 3,
    motors: offered.length - part.columns.reduce((n, { motors }) => n + motors.length, 0),
  });
  expect(matrixPart(matrix, { rows: 1_000, columns: 1_000 })).toEqual({
    ...matrix,
    left: { rows: 0, sets: 0, columns: 0, motors: 0 },
  });
});
