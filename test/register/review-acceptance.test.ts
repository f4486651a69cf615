import { beforeEach, describe, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { acceptFinding, type FindingToAccept } from '@/lib/register/commands/accept-finding';
import { changeThings } from '@/lib/register/commands/change-things';
import { withdrawFindingAcceptance } from '@/lib/register/commands/withdraw-finding-acceptance';
import { review } from '@/lib/register/queries/review';
import { ALL_OPEN, type ReviewFilter } from '@/lib/review/list/review-filter';
import { colleague, got, smallPlant, someone } from './plant';

const TODAY = '2026-11-28';

let here: Awaited<ReturnType<typeof smallPlant>>;
let planner: Actor;
beforeEach(async () => {
  here = await smallPlant();
  planner = here.actor;
  await edit({ 'coupling.type': 'coupling', 'load.atPumpRpm': 1750, 'load.shaftKw': 1 });
});

type Edit = Parameters<typeof changeThings>[1][number]['edit'];

async function edit(told: Edit, tag = 'P-101') {
  const done = await changeThings(planner, [{ thing: 'set', id: got(here.sets, tag), version: null, edit: told }]);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
}

const list = async (state: ReviewFilter['state'], today = TODAY, actor = planner) =>
  (await review(actor, { filter: { ...ALL_OPEN, state }, today }, { page: 1, perPage: 50 })).rows;
const rules = async (state: ReviewFilter['state'], today = TODAY) =>
  (await list(state, today)).map(({ tag, finding }) => `${tag} ${finding.rule}`);

/** The first finding, as a person would accept it. */
async function oversized(differs: Partial<FindingToAccept> = {}): Promise<FindingToAccept> {
  const [first] = await list('open');
  if (!first) throw new Error('nothing to accept');
  const { setId, finding } = first;
  return {
    ...{ setId, rule: finding.rule, figures: finding.figures },
    ...{ reason: 'Kept for the summer product', againOn: '2027-06-01', ...differs },
  };
}
const accepted = async (differs: Partial<FindingToAccept> = {}) => {
  const done = await acceptFinding(planner, await oversized(differs), TODAY);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  return done.acceptanceId;
};
const audits = (action: string) =>
  db.auditEntry.findMany({ where: { siteId: planner.siteId, action }, orderBy: { at: 'asc' } });

describe('an accepted finding', () => {
  test('stands apart, with who, when, why and until when', async () => {
    await accepted();
    expect(await rules('open')).toEqual([]);
    const [row] = await list('accepted');
    expect(row).toMatchObject({
      ...{ tag: 'P-101', isAccepted: true },
      note: { reason: 'Kept for the summer product', by: planner.name, againOn: '2027-06-01' },
    });
    expect(await rules('all')).toEqual(['P-101 oversized']);
    expect((await audits('review.accept')).map(({ after }) => after)).toMatchObject([
      { rule: 'oversized', why: 'Kept for the summer product', againOn: '2027-06-01', says: expect.any(String) },
    ]);
  });

  test('stands open again on the day told, and says that it was accepted', async () => {
    await accepted();
    expect(await rules('open', '2027-05-31')).toEqual([]);
    expect(await rules('open', '2027-06-01')).toEqual(['P-101 oversized']);
    expect((await list('open', '2027-06-01'))[0]?.note).toMatchObject({ reason: 'Kept for the summer product' });
  });

  test('stands open again when a figure it rests on changes, and holds when another does', async () => {
    await accepted();
    await edit({ service: 'Frothing' });
    await edit({ 'surroundings.ambientC': 30 });
    expect(await rules('open')).toEqual([]);
    await edit({ 'load.shaftKw': 0.9 });
    expect(await rules('open')).toEqual(['P-101 oversized']);
    await edit({ 'load.shaftKw': 1 });
    expect(await rules('open')).toEqual([]);
  });

  test('is withdrawn by a person, and stays on record', async () => {
    const acceptanceId = await accepted();
    expect(await withdrawFindingAcceptance(planner, acceptanceId)).toEqual({ outcome: 'saved' });
    expect(await rules('open')).toEqual(['P-101 oversized']);
    expect(await withdrawFindingAcceptance(planner, acceptanceId)).toMatchObject({ outcome: 'refused' });
    expect(await db.reviewAcceptance.count({ where: { siteId: planner.siteId } })).toBe(1);
    expect(await audits('review.withdraw')).toHaveLength(1);
  });

  test('gives way to what is said of it later; said again it is the same', async () => {
    const first = await oversized();
    await acceptFinding(planner, first, TODAY);
    expect(await acceptFinding(planner, first, TODAY)).toEqual({ outcome: 'same' });
    expect(await acceptFinding(planner, { ...first, againOn: '2028-01-01' }, TODAY)).toMatchObject({
      outcome: 'saved',
    });
    expect(await db.reviewAcceptance.count({ where: { siteId: planner.siteId, withdrawnAt: null } })).toBe(1);
  });

  test('of five who accept at once one stands', async () => {
    const asked = await oversized();
    const done = await Promise.all(
      [1, 2, 3, 4, 5].map((i) => acceptFinding(planner, { ...asked, reason: `Reason ${i}` }, TODAY)),
    );
    expect(done.map(({ outcome }) => outcome)).toEqual(Array(5).fill('saved'));
    expect(await db.reviewAcceptance.count({ where: { siteId: planner.siteId, withdrawnAt: null } })).toBe(1);
  });
});

describe('is refused', () => {
  test.each<[string, Partial<FindingToAccept>, string]>([
    ['without a reason', { reason: ' ' }, 'reason'],
    ['with a reason that is too long', { reason: 'x'.repeat(501) }, 'reason'],
    ['without a day', { againOn: '' }, 'againOn'],
    ['with today', { againOn: TODAY }, 'againOn'],
    ['with a day that is none', { againOn: '2027-02-30' }, 'againOn'],
    ['for other figures', { figures: 'urgency=plan' }, 'finding'],
    ['for a rule that raises nothing', { rule: 'overloaded' }, 'finding'],
    ['for a set that is none', { setId: 'x' }, 'finding'],
  ])('%s', async (_, differs, path) => {
    expect(await acceptFinding(planner, await oversized(differs), TODAY)).toMatchObject({
      outcome: 'refused',
      problems: [{ path }],
    });
    expect(await db.reviewAcceptance.count({ where: { siteId: planner.siteId } })).toBe(0);
  });

  test('by a technician and from another site', async () => {
    const asked = await oversized();
    const id = await accepted();
    const technician = await colleague(planner.siteId, 'technician', 'Per Ost');
    await expect(acceptFinding(technician, asked, TODAY)).rejects.toThrow('review.accept');
    const other = await someone();
    expect(await acceptFinding(other, asked, TODAY)).toMatchObject({ outcome: 'refused' });
    expect(await withdrawFindingAcceptance(other, id)).toMatchObject({ outcome: 'refused' });
    expect(await list('all', TODAY, other)).toEqual([]);
  });
});
