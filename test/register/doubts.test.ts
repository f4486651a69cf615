import { beforeEach, describe, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { acceptDoubt, type DoubtToAccept } from '@/lib/register/commands/accept-doubt';
import { changeThings } from '@/lib/register/commands/change-things';
import { withdrawAcceptance } from '@/lib/register/commands/withdraw-acceptance';
import type { OpenDoubt } from '@/lib/register/doubts/acceptances';
import { doubts } from '@/lib/register/queries/doubts';
import { doubtsOf } from '@/lib/register/queries/doubts-of';
import { addMotors, addSets, colleague, got, plainSet, plate, smallPlant, someone } from './plant';

const TODAY = '2026-11-27';
const WHOLE = { page: 1, perPage: 50 };

let here: Awaited<ReturnType<typeof smallPlant>>;
let planner: Actor;
beforeEach(async () => {
  here = await smallPlant();
  planner = here.actor;
});

const fast = (id: string) => ({
  ...plate(id),
  ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1850, amps: 6.6 }],
});
const addFast = async (number = 'M-20', place: 'at-repair' | 'scrapped' = 'at-repair') =>
  got(await addMotors(planner, { motor: fast(number), at: { place } }), number);

const standing = async (actor: Actor = planner, rule: Parameters<typeof doubts>[1]['rule'] = null) =>
  doubts(actor, { rule, today: TODAY }, WHOLE);
const names = (open: readonly OpenDoubt[]) => open.map(({ name, doubt }) => `${name} ${doubt.rule}`);

/** The first doubt of a motor, as a person would accept it. */
async function speedDoubt(motorId: string, differs: Partial<DoubtToAccept> = {}): Promise<DoubtToAccept> {
  const [first] = (await doubtsOf(planner, [{ thing: 'motor', id: motorId }], TODAY)).open;
  if (!first) throw new Error('nothing to accept');
  const { thing, thingId, doubt } = first;
  return {
    thing,
    thingId,
    rule: doubt.rule,
    figures: doubt.figures,
    reason: 'Read on the plate',
    againOn: null,
    ...differs,
  };
}

async function rpm(motorId: string, value: number) {
  const { version } = await db.motor.findUniqueOrThrow({
    where: { siteId_id: { siteId: planner.siteId, id: motorId } },
  });
  const done = await changeThings(planner, [
    { thing: 'motor', id: motorId, version, edit: { 'ratings.0.rpm': value } },
  ]);
  expect(done.outcome).toBe('saved');
}

const audits = (action: string) =>
  db.auditEntry.findMany({ where: { siteId: planner.siteId, action }, orderBy: { at: 'asc' } });

describe('what stands', () => {
  test('a plant in order has no doubts', async () => {
    expect(await standing()).toEqual({ open: [], all: 0, accepted: [], acceptedAll: 0, counts: [], isAll: true });
  });

  test('doubts of sets and of motors, wrong ones first, each with its record', async () => {
    await addFast();
    const low = plainSet('P-103');
    const sets = await addSets(planner, {
      ...low,
      set: { ...low.set, supply: { ...low.set.supply, overloadMinA: 4, overloadMaxA: 6 } },
    });
    await addMotors(planner, { motor: plate('M-3'), at: { place: 'in-set', setId: got(sets, 'P-103') } });
    const { open, all, counts } = await standing();
    expect(names(open)).toEqual(['M-20 speed', 'P-103 overload']);
    expect(open[1]).toMatchObject({ thing: 'set', thingId: got(sets, 'P-103'), before: null });
    expect(all).toBe(2);
    expect(counts).toEqual([
      { rule: 'speed', wrong: 1, doubtful: 0, accepted: 0 },
      { rule: 'overload', wrong: 0, doubtful: 1, accepted: 0 },
    ]);
  });

  test('a rule and a page are asked for, and the counts stay whole', async () => {
    await addFast('M-20');
    await addFast('M-21');
    const first = await doubts(planner, { rule: 'speed', today: TODAY }, { page: 1, perPage: 1 });
    const second = await doubts(planner, { rule: 'speed', today: TODAY }, { page: 2, perPage: 1 });
    expect([...names(first.open), ...names(second.open)]).toEqual(['M-20 speed', 'M-21 speed']);
    expect(first.all).toBe(2);
    expect(await standing(planner, 'overload')).toMatchObject({ open: [], all: 0, counts: first.counts });
  });

  test('two motors with one serial number are told of each other, however it is written', async () => {
    const of = (number: string, serial: string) => ({
      motor: plate(number),
      at: { place: 'at-repair' as const },
      maker: 'Quillmoor',
      serial,
    });
    const ids = await addMotors(planner, of('M-30', 'QU 123-456'), of('M-31', 'qu123456'));
    expect(names((await standing()).open)).toEqual(['M-30 serial', 'M-31 serial']);
    const { open } = await doubtsOf(planner, [{ thing: 'motor', id: got(ids, 'M-30') }], TODAY);
    expect(open).toHaveLength(1);
    expect(open[0]?.doubt.figures).toBe((await standing()).open[0]?.doubt.figures);
  });

  test('numbers that read alike are told of each other', async () => {
    const ids = await addMotors(planner, { motor: plate('M-O7'), at: { place: 'at-repair' } });
    await addMotors(planner, { motor: plate('m-07'), at: { place: 'on-order' } });
    expect(names((await standing()).open)).toEqual(['M-O7 two-places', 'm-07 two-places']);
    const { open } = await doubtsOf(planner, [{ thing: 'motor', id: got(ids, 'M-O7') }], TODAY);
    expect(open[0]?.doubt.says).toBe('M-O7 (at repair) reads like m-07 (on order): a motor is in one place.');
  });

  test('a change is seen at once, and so is one of the supply, and another motor in the set', async () => {
    const id = await addFast();
    expect((await standing()).all).toBe(1);
    await rpm(id, 1750);
    expect((await standing()).all).toBe(0);

    const setId = got(here.sets, 'P-101');
    const change = async (edit: Parameters<typeof changeThings>[1][number]['edit']) => {
      const { version } = await db.pumpSet.findUniqueOrThrow({
        where: { siteId_id: { siteId: planner.siteId, id: setId } },
      });
      expect((await changeThings(planner, [{ thing: 'set', id: setId, version, edit }])).outcome).toBe('saved');
    };
    await change({ 'supply.overloadMinA': 2, 'supply.overloadMaxA': 4 });
    expect(names((await standing()).open)).toEqual(['P-101 overload']);
    await change({ 'supply.overloadMinA': 5, 'supply.overloadMaxA': 9, 'supply.phases': 1 });
    expect(names((await standing()).open)).toEqual(['P-101 supply-phases']);
  });

  test('the same is told of one record as of the whole site', async () => {
    const id = await addFast();
    const whole = (await standing()).open;
    expect((await doubtsOf(planner, [{ thing: 'motor', id }], TODAY)).open).toEqual(whole);
    expect((await doubtsOf(planner, [{ thing: 'set', id: got(here.sets, 'P-101') }], TODAY)).open).toEqual([]);
    expect(await doubtsOf(planner, [{ thing: 'motor', id: 'no id' }], TODAY)).toEqual({ open: [], accepted: [] });
  });
});

describe('accepting', () => {
  test('an accepted doubt stands apart with who, when and why, and the audit has it', async () => {
    const id = await addFast();
    const doubt = await speedDoubt(id, { reason: '  Read on the plate, twice  ', againOn: '2027-01-31' });
    const done = await acceptDoubt(planner, doubt, TODAY);
    if (done.outcome !== 'saved') throw new Error(done.outcome);
    const { open, accepted, acceptedAll, counts } = await standing();
    expect(open).toEqual([]);
    expect(acceptedAll).toBe(1);
    expect(counts).toEqual([{ rule: 'speed', wrong: 0, doubtful: 0, accepted: 1 }]);
    expect(accepted[0]).toMatchObject({
      name: 'M-20',
      accepted: {
        acceptanceId: done.acceptanceId,
        reason: 'Read on the plate, twice',
        by: 'Ida Fenn',
        againOn: '2027-01-31',
      },
    });
    expect(await audits('doubt.accept')).toMatchObject([
      {
        thing: 'motor',
        thingId: id,
        byId: planner.userId,
        before: null,
        after: {
          acceptanceId: done.acceptanceId,
          rule: 'speed',
          says: expect.stringContaining('1850 rpm'),
          why: 'Read on the plate, twice',
          againOn: '2027-01-31',
        },
      },
    ]);
  });

  test('other figures bring it back, with what was said before', async () => {
    const id = await addFast();
    await acceptDoubt(planner, await speedDoubt(id), TODAY);
    await rpm(id, 1900);
    const { open, accepted } = await standing();
    expect(accepted).toEqual([]);
    expect(open[0]).toMatchObject({ name: 'M-20', before: { reason: 'Read on the plate', by: 'Ida Fenn' } });
    expect(await acceptDoubt(planner, await speedDoubt(id, { reason: 'So it is' }), TODAY)).toMatchObject({
      outcome: 'saved',
    });
    expect((await standing()).accepted).toHaveLength(1);
    expect(await db.acceptance.count({ where: { siteId: planner.siteId, withdrawnAt: null } })).toBe(1);
    expect((await audits('doubt.accept'))[1]?.before).toEqual({ why: 'Read on the plate' });
  });

  test('the day told brings it back', async () => {
    const id = await addFast();
    await acceptDoubt(planner, await speedDoubt(id, { againOn: '2026-12-24' }), TODAY);
    const on = async (today: string) => (await doubts(planner, { rule: null, today }, WHOLE)).all;
    expect(await on('2026-12-23')).toBe(0);
    expect(await on('2026-12-24')).toBe(1);
  });

  test('figures that changed meanwhile are not accepted unseen', async () => {
    const id = await addFast();
    const seen = await speedDoubt(id);
    await rpm(id, 1900);
    expect(await acceptDoubt(planner, seen, TODAY)).toMatchObject({
      outcome: 'refused',
      problems: [{ path: 'doubt', says: expect.stringContaining('other figures') }],
    });
    await rpm(id, 1750);
    expect(await acceptDoubt(planner, seen, TODAY)).toMatchObject({
      outcome: 'refused',
      problems: [{ path: 'doubt', says: expect.stringContaining('not raised any more') }],
    });
    expect(await db.acceptance.count({ where: { siteId: planner.siteId } })).toBe(0);
    expect(await audits('doubt.accept')).toEqual([]);
  });

  test.each([
    ['no reason', { reason: '  ' }, 'reason'],
    ['a page of reasons', { reason: 'x'.repeat(501) }, 'reason'],
    ['a day that was', { againOn: '2026-11-27' }, 'againOn'],
    ['no day', { againOn: '2027-02-30' }, 'againOn'],
    ['a rule that raised nothing', { rule: 'torque' }, 'doubt'],
    ['no record', { thingId: 'M-20' }, 'doubt'],
  ])('is refused with %s', async (_, differs, path) => {
    const id = await addFast();
    expect(await acceptDoubt(planner, await speedDoubt(id, differs), TODAY)).toMatchObject({
      outcome: 'refused',
      problems: [{ path }],
    });
    expect(await db.acceptance.count({ where: { siteId: planner.siteId } })).toBe(0);
  });

  test('five people at once: one acceptance stands', async () => {
    const id = await addFast();
    const doubt = await speedDoubt(id);
    const all = await Promise.all([1, 2, 3, 4, 5].map(() => acceptDoubt(planner, doubt, TODAY)));
    expect(all.map(({ outcome }) => outcome).sort()).toEqual(['same', 'same', 'same', 'same', 'saved']);
    expect(await db.acceptance.count({ where: { siteId: planner.siteId } })).toBe(1);
    expect(await audits('doubt.accept')).toHaveLength(1);
  });

  test('withdrawn, it is raised again, and the acceptance stays on record', async () => {
    const id = await addFast();
    const done = await acceptDoubt(planner, await speedDoubt(id), TODAY);
    if (done.outcome !== 'saved') throw new Error(done.outcome);
    expect(await withdrawAcceptance(planner, done.acceptanceId)).toEqual({ outcome: 'saved' });
    expect((await standing()).open[0]).toMatchObject({ name: 'M-20', before: null });
    expect(await db.acceptance.count({ where: { siteId: planner.siteId } })).toBe(1);
    expect(await audits('doubt.withdraw')).toMatchObject([
      { thing: 'motor', thingId: id, before: null, after: { rule: 'speed', why: 'Read on the plate' } },
    ]);
    expect(await withdrawAcceptance(planner, done.acceptanceId)).toMatchObject({ outcome: 'refused' });
    expect(await withdrawAcceptance(planner, 'none')).toMatchObject({ outcome: 'refused' });
  });

  test('S24 the desk accepts and withdraws, a technician reads', async () => {
    const id = await addFast();
    const doubt = await speedDoubt(id);
    const technician = await colleague(planner.siteId, 'technician', 'Bo Lund');
    await expect(acceptDoubt(technician, doubt, TODAY)).rejects.toThrow('Not allowed: doubt.accept');
    await expect(withdrawAcceptance(technician, id)).rejects.toThrow('Not allowed: doubt.accept');
    expect((await standing(technician)).all).toBe(1);
    for (const role of ['planner', 'reliability', 'administrator'] as const) {
      const done = await acceptDoubt(
        await colleague(planner.siteId, role, 'Una Voss'),
        { ...doubt, reason: role },
        TODAY,
      );
      expect(done.outcome).toBe('saved');
    }
  });

  test('S26 a stranger neither sees, accepts nor withdraws', async () => {
    const id = await addFast();
    const doubt = await speedDoubt(id);
    const stranger = await someone('administrator');
    expect((await standing(stranger)).all).toBe(0);
    expect(await doubtsOf(stranger, [{ thing: 'motor', id }], TODAY)).toEqual({ open: [], accepted: [] });
    expect(await acceptDoubt(stranger, doubt, TODAY)).toMatchObject({ outcome: 'refused' });
    const done = await acceptDoubt(planner, doubt, TODAY);
    if (done.outcome !== 'saved') throw new Error(done.outcome);
    expect(await withdrawAcceptance(stranger, done.acceptanceId)).toMatchObject({ outcome: 'refused' });
    expect((await standing()).acceptedAll).toBe(1);
  });
});
