import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { triedAgain } from '@/lib/db/tried-again';
import { type Problem, read } from '@/lib/plant/reading';
import { type PumpSet, type PumpSetInput, set as schema } from '@/lib/plant/set';
import { type AboutSet, setColumns, supplyColumns } from '../set-columns';
import { aboutProblems } from '../things/about-problems';
import { SET_TEXTS, setsStanding } from '../things/set-thing';
import { areaProblems } from './new-places';
import { MOST_AT_ONCE, parts } from './parts';

export interface NewSet extends AboutSet {
  /** As the contract has it, without a failed motor. Its surroundings override the area's, key by key. */
  set: Omit<PumpSetInput, 'failed'>;
}

export type RegisteredSets =
  /** Tag to the id it got. */
  { outcome: 'saved'; changeId: string; ids: Map<string, string> } | { outcome: 'refused'; problems: Problem[] };

/** Adds sets with their pumps and supplies, all or none. A problem's path begins with the place in the list. */
export async function registerSets(actor: Actor, sets: readonly NewSet[]): Promise<RegisteredSets> {
  return triedAgain(() => db.$transaction((tx) => registerSetsIn(tx, actor, sets), { timeout: MOST_AT_ONCE }));
}

/** The same in a transaction that does more besides. */
export function registerSetsIn(tx: Tx, actor: Actor, sets: readonly NewSet[]): Promise<RegisteredSets> {
  must(actor, 'set.edit');
  return registerSetsStep(tx, { ...actor, changeId: randomUUID() }, sets);
}

/** The step of it, under the change that `by` names. Refused, nothing was written. */
export async function registerSetsStep(
  tx: Tx,
  by: Actor & { changeId: string },
  sets: readonly NewSet[],
): Promise<RegisteredSets> {
  const problems: Problem[] = [];
  const made = sets.flatMap((given, i) => {
    const told = read(schema, given.set);
    const about = aboutProblems({ ...given, set: null }, SET_TEXTS);
    if (told.ok && about.length === 0) return [{ ...given, input: given.set, set: told.value, ...newIds(given) }];
    const all = told.ok ? about : [...told.problems, ...about];
    problems.push(...all.map((problem) => ({ ...problem, path: `${i}.${problem.path}` })));
    return [];
  });
  if (problems.length > 0) return { outcome: 'refused', problems };
  const areas = await areaProblems(
    tx,
    by.siteId,
    made.map(({ areaId }) => areaId),
  );
  const there = [...(await taken(tx, by, made)), ...areas];
  if (there.length > 0) return { outcome: 'refused', problems: there };
  for (const part of parts(made)) await insert(tx, by, part);
  return { outcome: 'saved', changeId: by.changeId, ids: new Map(made.map(({ set, id }) => [set.tag, id])) };
}

type Made = Omit<NewSet, 'set'> & { set: PumpSet; input: NewSet['set'] } & ReturnType<typeof newIds>;

const newIds = ({ pump, set, supplyName }: NewSet) => ({
  id: randomUUID() as string,
  pumpId: pump ? (randomUUID() as string) : null,
  supplyId: set.supply || supplyName ? (randomUUID() as string) : null,
});

/** Tags that are in the register, or twice in the list. */
async function taken(tx: Tx, { siteId }: Actor, made: readonly Made[]): Promise<Problem[]> {
  const tags = made.map(({ set }) => set.tag);
  const rows = await tx.pumpSet.findMany({ where: { siteId, tag: { in: tags } }, select: { tag: true } });
  const seen = new Set(rows.map(({ tag }) => tag));
  return made.flatMap(({ set: { tag } }, i) => {
    if (!seen.has(tag)) {
      seen.add(tag);
      return [];
    }
    return [{ path: `${i}.tag`, value: tag, says: 'is already a set of this site' }];
  });
}

async function insert(tx: Tx, by: Actor & { changeId: string }, made: readonly Made[]) {
  const { siteId } = by;
  const pumps = made.flatMap(({ pump, pumpId }) => (pump && pumpId ? [{ ...pump, siteId, id: pumpId }] : []));
  await tx.pump.createMany({ data: pumps });
  await tx.supply.createMany({
    data: made.flatMap(({ supplyId: id, ...one }) => (id === null ? [] : [{ siteId, id, ...supplyColumns(one) }])),
  });
  await tx.pumpSet.createMany({
    data: made.map((one) => ({ siteId, id: one.id, pumpId: one.pumpId, supplyId: one.supplyId, ...setColumns(one) })),
  });
  const standing = await setsStanding(
    tx,
    siteId,
    made.map(({ id }) => id),
  );
  await record(
    tx,
    by,
    ...[...standing].map(([id, { state }]) => ({ action: 'set.register', thing: 'set', thingId: id, after: state })),
  );
}
