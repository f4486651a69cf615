import { beforeAll, describe, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { motorHistory } from '@/lib/register/queries/motor-history';
import { recentSets } from '@/lib/register/queries/recent-sets';
import { reviewCharts } from '@/lib/register/queries/review-charts';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setHistory } from '@/lib/register/queries/set-history';
import { shelfMotors } from '@/lib/register/queries/shelf-motors';
import { keptReview } from '@/lib/register/review/kept-review';
import { demoAccounts } from '../../seed/accounts';
import { loadPlant, loadRecords } from '../../seed/load-plant';
import { MAKERS } from '../../seed/plant/catalogue';
import { harrowmere } from '../../seed/plant/harrowmere';
import { MEANT } from '../../seed/plant/meant';
import { saltgarth } from '../../seed/plant/saltgarth';
import { someone } from '../register/plant';

const TODAY = '2026-11-25';
const plant = harrowmere(TODAY);
let people: Awaited<ReturnType<typeof demoAccounts>>;

beforeAll(async () => {
  process.env.BEDPLATE_DEMO_PASSWORD = 'heron-quarry-lantern';
  const { siteId } = await someone();
  people = await demoAccounts(siteId);
  await loadPlant(plant, people, TODAY);
});

test('it has about 120 sets and about 70 motors that wait', async () => {
  const where = { siteId: people.planner.siteId };
  expect(await db.pumpSet.count({ where })).toBe(120);
  const waiting = await db.motor.count({ where: { ...where, place: { notIn: ['in-set', 'scrapped'] } } });
  expect(waiting).toBeGreaterThanOrEqual(65);
  expect(waiting).toBeLessThanOrEqual(80);
});

test('the same day makes the same plant', () => {
  expect(harrowmere(TODAY)).toEqual(plant);
});

test('every maker is of the invented list', () => {
  const known: readonly string[] = MAKERS;
  expect(plant.motors.filter(({ maker }) => !known.includes(maker))).toEqual([]);
});

test('every set’s own motor is a straight swap for its own place, but for what the demo means otherwise', async () => {
  const others: string[] = [];
  for (const { input, area, motor } of plant.sets) {
    const known = await setByTag(people.technician, input.tag);
    if (motor === null || !known?.set.failed) continue;
    const { set } = known;
    const result = assess({ asOf: TODAY, set, candidates: [known.set.failed] }, defaultSettings).results[0];
    // A drive is always told the plate again, its own motor's too.
    const usual = set.supply.start === 'drive' ? 'swap-with-work' : 'straight-swap';
    const meant = (MEANT[input.tag] ?? MEANT[area])?.verdict ?? usual;
    if (result?.verdict !== meant)
      others.push(`${input.tag}: ${result?.verdict}, meant ${meant}: ${spoilers(result?.findings)}`);
  }
  expect(others).toEqual([]);
});

test('what the demo means otherwise is a short list, and each is there', () => {
  const names = Object.keys(MEANT);
  expect(names.length).toBeLessThanOrEqual(6);
  for (const name of names)
    expect(
      plant.sets.some(({ area, input }) => area === name || input.tag === name),
      name,
    ).toBe(true);
});

test('the review finds what the demo means an engineer to find', async () => {
  const { sets } = await keptReview(people.planner.siteId);
  const found = [...sets.values()].flatMap(({ kept, findings }) => findings.map(({ rule }) => `${kept.tag} ${rule}`));
  expect(found.sort()).toEqual(
    [
      ...['BG-107', 'CP-102', 'EF-111', 'RF-111', 'SK-106'].map((tag) => `${tag} oversized`),
      // Frames of the 1952 series and a Z shaft, for which no shelf holds anything.
      ...['OH-103', 'OH-105', 'OH-106', 'OH-107', 'OH-108', 'SK-201'].map((tag) => `${tag} spare`),
      ...[
        'EF-106 currents',
        'RF-106 overloaded',
        'LB-103 supply',
        'EF-106 derated',
        'RF-201 drive-duty',
        'RF-201 speed',
      ],
    ].sort(),
  );
});

test('the volts read at one set are as uneven as derates its motor', async () => {
  // NEMA MG 1 14.36: largest deviation from the mean over the mean. (473 + 488 + 454) / 3 = 471.67; 17.67 / 471.67 = 3.75 %.
  const { sets } = await keptReview(people.planner.siteId);
  const uneven = [...sets.values()].find(({ kept }) => kept.tag === 'EF-106')?.standing?.asked.set.supply.unbalancePct;
  expect(uneven).toBeCloseTo(3.746, 3);
});

test('some weeks of the review are kept, ending as it stands, with days between of which nothing is', async () => {
  const { days } = await reviewCharts(people.planner);
  const open = [...(await keptReview(people.planner.siteId)).sets.values()].flatMap(({ findings }) => findings).length;
  expect(days.length).toBeGreaterThan(28);
  expect(days.at(-1)).toMatchObject({ day: '2026-11-24', open });
  expect(new Set(days.map((one) => one.open)).size).toBeGreaterThan(3);
  expect(days.every((one) => one.open > 0 && one.moneyHundredths > 0)).toBe(true);
  expect(days.map(({ day }) => day)).not.toContain('2026-11-04');
  const kept = await db.reviewDay.findMany({ where: { siteId: people.planner.siteId }, orderBy: { day: 'asc' } });
  for (const [i, { open: stood, opened, closed }] of kept.entries())
    expect([i, opened === null || closed === null ? null : opened - closed]).toEqual([
      ...[i, i === 0 ? null : stood - (kept[i - 1]?.open ?? Number.NaN)],
    ]);
});

test('measurements of several sets stand, of several days', async () => {
  const rows = await db.measurement.findMany({ where: { siteId: people.planner.siteId } });
  expect(new Set(rows.map(({ setId }) => setId)).size).toBeGreaterThanOrEqual(6);
  expect(new Set(rows.map(({ at }) => at.toISOString().slice(0, 10))).size).toBe(rows.length);
  expect(rows.every(({ motorId }) => motorId !== null)).toBe(true);
});

describe('the awkward ones are there', () => {
  const waiting = plant.motors.filter(({ place }) => typeof place === 'object' && 'store' in place);
  const sets = plant.sets.map(({ input }) => input);
  test.each([
    ['a 1952 series motor in a set', plant.motors.filter((m) => m.plate.frame === '254U' && m.place !== 'scrapped')],
    ['a Z shaft that was measured', plant.motors.filter((m) => m.plate.frame?.endsWith('Z') && m.plate.measured)],
    ['a 50 Hz supply', sets.filter((s) => s.supply?.hertz === 50)],
    ['a star-delta starter', sets.filter((s) => s.supply?.start === 'star-delta')],
    ['a drive', sets.filter((s) => s.supply?.start === 'drive')],
    ['a single-phase supply', sets.filter((s) => s.supply?.phases === 1)],
    ['washdown', plant.areas.filter((a) => a.surroundings.washdown)],
    ['a dust zone', sets.filter((s) => s.surroundings?.classification?.scheme === 'IEC')],
    ['a dust division', plant.areas.filter((a) => a.surroundings.classification?.scheme === 'NEC')],
    ['a missing plate with a measured seat', plant.sets.filter((s) => s.motor === null && s.input.seat?.shaftHeightMm)],
    ['a vertical set', sets.filter((s) => s.shaftDirection === 'down')],
    ['a belt', sets.filter((s) => s.coupling?.type === 'belt')],
    ['a JM pump shaft', plant.motors.filter((m) => m.plate.frame?.endsWith('JM'))],
    ['a gear with a quill', sets.filter((s) => s.coupling?.input === 'quill')],
    ['a spare at repair', plant.motors.filter((m) => m.place === 'at-repair')],
    ['a spare with a wet winding', waiting.filter(({ plate }) => isLess(plate.spare?.insulationMohm, 1))],
    [
      'a spare over 24 months on its shelf',
      waiting.filter(({ plate }) => isLess(plate.spare?.shelvedOn, '2024-11-25')),
    ],
  ])('%s', (_name, found: readonly unknown[]) => {
    expect(found.length).toBeGreaterThan(0);
  });

  test('no shelf holds a motor of the 1952 series', async () => {
    const { offered } = await shelfMotors(people.technician);
    expect(offered.filter(({ motor }) => motor.frame?.endsWith('U')).map(({ motor }) => motor.id)).toEqual([]);
  });
});

test('histories are not empty: past swaps, a swap judged, faults open', async () => {
  const { technician } = people;
  const veteran = await setByTag(technician, 'OH-201');
  const rinse = await setByTag(technician, 'CP-201');
  if (!veteran?.row.motor || !rinse) throw new Error('no OH-201 or CP-201');
  expect(await motorHistory(technician, veteran.row.motor.id)).toContainEqual(
    expect.objectContaining({ kind: 'swap', setTag: 'OH-201', motorOut: 'M-0091' }),
  );
  expect(await setHistory(technician, rinse.row.id)).toEqual(
    expect.arrayContaining([
      expect.objectContaining({ kind: 'swap', motorIn: 'M-0516', verdict: 'straight-swap' }),
      expect.objectContaining({ kind: 'fault', closedAt: expect.any(Date) }),
    ]),
  );
  expect((await recentSets(technician)).filter(({ failedAt }) => failedAt !== null)).toHaveLength(4);
});

const isLess = <T extends number | string>(value: T | null | undefined, limit: T) =>
  value !== null && value !== undefined && value < limit;

const spoilers = (findings: readonly { criterion: string; grade: string; says: string }[] | undefined) =>
  (findings ?? [])
    .filter(({ grade }) => grade !== 'ok' && grade !== 'note')
    .map(({ criterion, grade, says }) => `${criterion} ${grade}: ${says}`)
    .join(' / ');

test('the second plant is loaded too, and neither knows anything of the other', async () => {
  const { siteId } = await someone();
  const others = await demoAccounts(siteId, 'Saltgarth');
  await loadRecords(saltgarth, others.planner);
  expect(await db.pumpSet.count({ where: { siteId } })).toBe(6);
  expect(await setByTag(others.planner, 'BT-11')).not.toBeNull();
  expect(await setByTag(people.planner, 'BT-11')).toBeNull();
  expect(await setByTag(others.planner, 'SK-104')).toBeNull();
  expect((await shelfMotors(others.technician)).offered.map(({ motor }) => motor.id)).toEqual(['S-007', 'S-008']);
  const known: readonly string[] = MAKERS;
  expect(saltgarth.motors.filter(({ maker }) => !known.includes(maker))).toEqual([]);
});
