import { beforeEach, expect, test } from 'vitest';
import { holdAsked } from '@/app/hold/hold-words';
import { db } from '@/lib/db/client';
import { assess } from '@/lib/matching/assess';
import type { HoldAsked } from '@/lib/register/hold-asked';
import { plantNow } from '@/lib/register/kept-plant/plant-now';
import { hold } from '@/lib/register/queries/hold';
import { got, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const answerTo = async (query: Record<string, string>) => {
  const done = await hold(here.actor, holdAsked(query, null));
  if (done.outcome !== 'chosen') throw new Error(JSON.stringify(done.problems));
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
  expect(rate.prior.shape / rate.prior.years).toBeCloseTo(rate.published.perYear, 9);
});

test('what is not told is asked for, never taken for granted', async () => {
  const refused = async (asked: HoldAsked) => {
    const done = await hold(here.actor, asked);
    return done.outcome === 'refused' ? done.problems.map(({ path }) => path) : [];
  };
  expect(await refused(holdAsked({ aim: 'cheapest' }, null))).toEqual(['each']);
  expect(await refused(holdAsked({ aim: 'cheapest-with-work', each: '100', perKw: '50' }, null))).toEqual(['perHour']);
  expect(await refused(holdAsked({ rate: 'nobody’s' }, null))).toEqual(['rate']);
  expect(await refused(holdAsked({ aim: 'cheapest-with-work', each: '100', perKw: '50' }, 60))).toEqual([]);
  expect(await refused(holdAsked({ q: 'nothing like it' }, null))).toEqual(['q']);
  const { lines } = await answerTo({ checks: 'all', hours: '40' });
  expect(lines.map(({ stock }) => stock)).toEqual(lines.map(() => null)); // nobody told any days
});
