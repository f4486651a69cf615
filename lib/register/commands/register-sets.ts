import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { type Problem, read } from '@/lib/plant/reading';
import { type PumpSet, type PumpSetInput, set as schema } from '@/lib/plant/set';
import { MOST_AT_ONCE, parts } from './parts';
import { surroundingsTold } from './surroundings-told';
import { toldOnly } from './told-only';

export interface NewPump {
  description: string;
  kind?: string | null;
  maker?: string | null;
  serial?: string | null;
}

export interface NewSet {
  /** As the contract has it, without a failed motor. Its surroundings override the area's, key by key. */
  set: Omit<PumpSetInput, 'failed'>;
  service?: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality?: number | null;
  areaId?: string | null;
  pump?: NewPump | null;
  /** What the supply is called at the plant: "MCC 2, way 14". */
  supplyName?: string | null;
  note?: string | null;
}

export type RegisteredSets =
  /** Tag to the id it got. */
  { outcome: 'saved'; ids: Map<string, string> } | { outcome: 'refused'; problems: Problem[] };

/** Adds sets with their pumps and supplies, all or none. A problem's path begins with the place in the list. */
export async function registerSets(actor: Actor, sets: readonly NewSet[]): Promise<RegisteredSets> {
  must(actor, 'set.edit');
  const problems: Problem[] = [];
  const made = sets.flatMap((given, i) => {
    const told = read(schema, given.set);
    if (told.ok) return [{ ...given, input: given.set, set: told.value, ...newIds(given) }];
    problems.push(...told.problems.map((problem) => ({ ...problem, path: `${i}.${problem.path}` })));
    return [];
  });
  if (problems.length > 0) return { outcome: 'refused', problems };
  return db.$transaction(
    async (tx) => {
      const there = await taken(tx, actor, made);
      if (there.length > 0) return { outcome: 'refused', problems: there };
      for (const part of parts(made)) await insert(tx, actor, part);
      return { outcome: 'saved', ids: new Map(made.map(({ set, id }) => [set.tag, id])) };
    },
    { timeout: MOST_AT_ONCE },
  );
}

type Made = Omit<NewSet, 'set'> & { set: PumpSet; input: NewSet['set'] } & ReturnType<typeof newIds>;

const newIds = ({ pump, set }: NewSet) => ({
  id: randomUUID() as string,
  pumpId: pump ? (randomUUID() as string) : null,
  supplyId: set.supply ? (randomUUID() as string) : null,
});

/** Tags that are in the register, or twice in the list. */
async function taken(tx: Tx, { siteId }: Actor, made: readonly Made[]): Promise<Problem[]> {
  const rows = await tx.pumpSet.findMany({ where: { siteId }, select: { tag: true } });
  const seen = new Set(rows.map(({ tag }) => tag));
  return made.flatMap(({ set: { tag } }, i) => {
    if (!seen.has(tag)) {
      seen.add(tag);
      return [];
    }
    return [{ path: `${i}.tag`, value: tag, says: 'is already a set of this site' }];
  });
}

async function insert(tx: Tx, actor: Actor, made: readonly Made[]) {
  const { siteId } = actor;
  const pumps = made.flatMap(({ pump, pumpId }) => (pump && pumpId ? [{ ...pump, siteId, id: pumpId }] : []));
  await tx.pump.createMany({ data: pumps });
  await tx.supply.createMany({ data: made.flatMap((one) => supplyRow(siteId, one)) });
  await tx.pumpSet.createMany({ data: made.map((one) => setRow(siteId, one)) });
  await record(
    tx,
    actor,
    ...made.map(({ id, set }) => ({
      action: 'set.register',
      thing: 'set',
      thingId: id,
      after: { tag: set.tag },
    })),
  );
}

function supplyRow(siteId: string, { set, supplyId, supplyName }: Made) {
  if (supplyId === null) return [];
  const { phases, volts, hertz, start, ...starter } = set.supply;
  return [{ siteId, id: supplyId, name: supplyName ?? null, phases, volts, hertz, start, starter: toldOnly(starter) }];
}

function setRow(siteId: string, { id, set, input, service, criticality, areaId, pumpId, supplyId, note }: Made) {
  return {
    siteId,
    id,
    tag: set.tag,
    service: service ?? null,
    criticality: criticality ?? null,
    areaId: areaId ?? null,
    pumpId,
    supplyId,
    mounting: set.mounting,
    shaftDirection: set.shaftDirection,
    rotation: set.rotation,
    seat: toldOnly(set.seat),
    coupling: toldOnly(set.coupling),
    base: toldOnly(set.base),
    load: toldOnly(set.load),
    surroundings: surroundingsTold(input.surroundings),
    needs: set.needs,
    note: note ?? null,
  };
}
