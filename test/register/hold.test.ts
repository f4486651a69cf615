import { beforeEach, expect, test } from 'vitest';
import { holdAsked } from '@/app/hold/asked-of';
import { db } from '@/lib/db/client';
import { assess } from '@/lib/matching/assess';
import type { HoldAsked } from '@/lib/register/hold-asked';
import { plantNow } from '@/lib/register/kept-plant/plant-now';
import { hold } from '@/lib/register/queries/hold';
import { setsToHold } from '@/lib/register/queries/sets-to-hold';
import { shownAs } from '@/lib/register/sets-taking-part';
import { buildsOf } from '@/lib/spares/hold/build';
import { got, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const answerTo = async (query: Record<string, string | string[]>) => {
  const done = await hold(here.actor, holdAsked(query, null));
  if (done.outcome !== 'chosen') throw new Error(JSON.stringify(done));
  return done.answer;
};
const ASKED = { checks: 'all', hours: '40', days: '30' };

test('the motors chosen could go into every set they are held for, by the judgement of each pair', async () => {
  const { lines, sets, unservable, found } = await answerTo(ASKED);
  const { settings } = await plantNow(here.actor);
  expect(lines.flatMap((line) => line.sets)).toHaveLength(sets.length - unservable.length);
  expect(lines.length).toBeGreaterThan(0);
  for (const { candidate, sets: own } of lines)
    for (const { set } of own) {
      const [result] = assess({ set, candidates: [candidate.motor], asOf: null }, settings).results;
      expect(result?.verdict).not.toBe('unsuitable');
    }
  expect(found).toMatchObject({ ended: 'done', cost: lines.length, costBound: lines.length });
});

test('what nothing may cover is named, with why', async () => {
  const { unservable } = await answerTo({
    ...ASKED,
    from: 'shelf',
    fit: 'straight-swap',
    checks: 'none',
    tags: 'P-101',
  });
  const { unservable: none } = await answerTo({ ...ASKED, from: 'shelf', tags: 'P-101' });
  expect(none).toEqual([]);
  for (const { of, because } of unservable) {
    expect(of.tag).toBe('P-101');
    expect(Object.values(because).reduce((sum, count) => sum + count, 0)).toBeGreaterThan(0);
  }
});

test('the plant’s own faults move the published rate, and stand beside it', async () => {
  const { rate: before } = await answerTo(ASKED);
  await db.fault.create({
    data: { siteId: here.actor.siteId, setId: got(here.sets, 'P-101'), byId: here.actor.userId, seen: ['trip'] },
  });
  const { rate } = await answerTo(ASKED);
  expect(rate.seen.failures).toBe(before.seen.failures + 1);
  expect(rate.after.shape).toBeCloseTo(before.after.shape + 1, 9);
  const old = { siteId: here.actor.siteId, setId: got(here.sets, 'P-101'), byId: here.actor.userId, seen: ['trip'] };
  await db.fault.create({ data: { ...old, at: new Date('2020-01-01'), closedAt: new Date('2020-01-02') } });
  expect((await answerTo(ASKED)).rate.seen.failures).toBe(rate.seen.failures); // of years that nobody counted
  expect(rate.prior.shape / rate.prior.years).toBeCloseTo(rate.published.perYear, 9);
});

test('what is not told is asked for, never taken for granted', async () => {
  const refused = async (asked: HoldAsked) => {
    const done = await hold(here.actor, asked);
    return done.outcome === 'refused' ? done.problems.map(({ path }) => path) : [done.outcome];
  };
  expect(await refused(holdAsked({ aim: 'cheapest' }, null))).toEqual(['each']);
  expect(await refused(holdAsked({ aim: 'cheapest-with-work', each: '100', perKw: '50' }, null))).toEqual(['perHour']);
  expect(await refused(holdAsked({ rate: 'nobody’s' }, null))).toEqual(['rate']);
  expect(await refused(holdAsked({ aim: 'cheapest-with-work', each: '100', perKw: '50' }, 60))).toEqual(['chosen']);
  expect(await refused(holdAsked({ q: 'nothing like it' }, null))).toEqual(['no-sets']);
  expect(await refused(holdAsked({ each: '100' }, null))).toEqual(['perKw']);
  expect(await refused(holdAsked({ days: 'soon', hours: '300', prices: '5.5 kW 640' }, null))).toEqual([
    'hours',
    'days',
    'prices',
  ]);
  const { lines } = await answerTo({ checks: 'all', hours: '40' });
  expect(lines.map(({ stock }) => stock)).toEqual(lines.map(() => null)); // nobody told any days
});

test('a listed price goes before the rule, and every bought motor says which of the two priced it', async () => {
  const asked = { ...ASKED, from: 'buy', aim: 'cheapest', each: '100', perKw: '50' };
  const { lines: byRule } = await answerTo(asked);
  expect(byRule.length).toBeGreaterThan(0);
  for (const { offered, candidate } of byRule)
    expect(offered.price).toEqual({ by: 'rule', amount: 100 + 50 * Number(candidate.motor.ratings[0]?.kw) });

  const row = byRule[0]?.candidate.motor.ratings[0];
  const size = row?.hp == null ? `${row?.kw} kW` : `${row.hp} hp`;
  const builds = byRule[0] === undefined ? [] : buildsOf(byRule[0].candidate.motor);
  const { lines, idle } = await answerTo({
    ...asked,
    prices: `${[size, ...builds].join(', ')}: 1\n900 kW: 5000`,
  });
  const listed = lines.filter(({ offered }) => offered.price?.by === 'list');
  expect(listed.length).toBeGreaterThan(0);
  for (const { offered } of listed) expect(offered.price).toMatchObject({ amount: 1, from: { line: 1 } });
  expect(idle.map(({ line }) => line)).toEqual([2]);
});

test('by a list alone whatever it does not name has no price, and is not chosen by cost', async () => {
  const { lines, unservable } = await answerTo({ ...ASKED, from: 'buy', aim: 'cheapest', prices: '900 kW: 5000' });
  expect(lines).toEqual([]);
  expect(unservable.length).toBeGreaterThan(0);
  expect(unservable.some(({ because }) => Number(because.price) > 0)).toBe(true);
});

test('what is left out is not held, and where nothing else covers a set that is why', async () => {
  const [first] = (await answerTo(ASKED)).lines;
  const name = String(first?.candidate.motor.id);
  const { lines, unservable } = await answerTo({ ...ASKED, without: name });
  expect(lines.map(({ candidate }) => candidate.motor.id)).not.toContain(name);
  const still = new Set(lines.flatMap((line) => line.sets.map(({ tag }) => tag)));
  for (const { tag } of first?.sets ?? [])
    if (!still.has(tag)) expect(unservable.find(({ of }) => of.tag === tag)?.because['left-out']).toBeGreaterThan(0);
  const all = (await answerTo({ ...ASKED, from: 'shelf' })).lines.flatMap(({ candidate }) => candidate.numbers);
  expect(all.length).toBeGreaterThan(0);
  const bare = await answerTo({ ...ASKED, from: 'shelf', without: all });
  expect(bare.lines.flatMap(({ candidate }) => candidate.numbers).filter((one) => all.includes(one))).toEqual([]);
  expect(bare.unservable.some(({ because }) => Number(because['left-out']) > 0)).toBe(true);
});

test('only the ticked sets take part, and whoever ticked all asks for those that come later too', async () => {
  const plant = await plantNow(here.actor);
  const listed = (query: Record<string, string | string[]>) => setsToHold(here.actor, holdAsked(query, null));
  const tagsOf = (sets: { tag: string }[]) => sets.map(({ tag }) => tag);
  const { sets, taking, inUse } = await listed({});
  expect(tagsOf(taking)).toEqual(tagsOf(sets));
  expect(inUse).toBe(plant.sets.size);
  const filter = holdAsked({}, null).sets;
  const shown = shownAs(filter, sets);

  expect(tagsOf((await answerTo({ ...ASKED, shown, set: 'P-101' })).sets)).toEqual(['P-101']);
  expect((await listed({ shown })).taking).toEqual([]);
  expect((await listed({ shown, set: 'P-101', tick: 'all' })).taking).toHaveLength(sets.length);
  expect((await listed({ shown, set: tagsOf(sets), tick: 'none' })).taking).toEqual([]);

  const fewer = sets.slice(1);
  const before = shownAs(filter, fewer);
  expect((await listed({ shown: before, set: tagsOf(fewer) })).taking).toHaveLength(sets.length);
});

test('ticks of another list do not count, and that is told; so is a tag that no set has', async () => {
  const listed = (query: Record<string, string | string[]>) => setsToHold(here.actor, holdAsked(query, null));
  const { sets } = await listed({});
  const shown = shownAs(holdAsked({}, null).sets, sets);
  const { taking, isOtherList } = await listed({ shown, set: 'P-102', tags: 'P-101' });
  expect(taking.map(({ tag }) => tag)).toEqual(['P-101']);
  expect(isOtherList).toBe(true);
  expect((await listed({ shown, set: 'P-102' })).isOtherList).toBe(false);
  expect((await listed({ tags: 'P-101, none such' })).unknown).toEqual(['none', 'such']);
});
