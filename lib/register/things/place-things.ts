import { objectOf, type State, stateOf } from '@/lib/fields/state';
import { type Problem, read } from '@/lib/plant/reading';
import { type PumpSetInput, set as setSchema } from '@/lib/plant/set';
import { surroundingsTold } from '../commands/surroundings-told';
import type { Stands, Thing } from './thing';

/** A part of the plant. Retired only when no set stands in it. */
export const areaThing: Thing = {
  async standing(tx, siteId, ids) {
    const rows = await tx.area.findMany({ where: { siteId, id: { in: [...ids] } } });
    return new Map(
      rows.map(({ id, version, name, surroundings, retiredAt }) => [
        id,
        stands(version, { name, surroundings, retiredAt }),
      ]),
    );
  },
  async locked(tx, siteId, ids) {
    await tx.$queryRaw`
      SELECT id FROM area WHERE site_id = ${siteId}::uuid AND id = ANY (${[...ids]}::uuid[]) ORDER BY id FOR NO KEY UPDATE`;
    return areaThing.standing(tx, siteId, ids);
  },
  async problems(tx, siteId, id, state) {
    const { surroundings } = objectOf(state);
    const told = read(setSchema.shape.surroundings, surroundings ?? {});
    return [
      ...nameProblems(state),
      ...strayProblems(state, /^(name|retiredAt|surroundings\..+)$/),
      ...(told.ok ? [] : told.problems.map((problem) => ({ ...problem, path: `surroundings.${problem.path}` }))),
      ...taken(state, await tx.area.count({ where: { siteId, name: nameOf(state), id: { not: id } } })),
      ...inUse(state, await tx.pumpSet.count({ where: { siteId, areaId: id, retiredAt: null } }), 'sets stand in it'),
    ];
  },
  async write(tx, siteId, id, state) {
    const { surroundings } = objectOf(state);
    await tx.area.update({
      where: { siteId_id: { siteId, id } },
      data: {
        name: nameOf(state),
        surroundings: surroundingsTold(surroundings as PumpSetInput['surroundings']),
        retiredAt: retiredOf(state),
      },
    });
  },
};

/** A store. Retired only when it has no shelf in use. */
export const storeThing: Thing = {
  async standing(tx, siteId, ids) {
    const rows = await tx.store.findMany({ where: { siteId, id: { in: [...ids] } } });
    return new Map(rows.map(({ id, version, name, retiredAt }) => [id, stands(version, { name, retiredAt })]));
  },
  async locked(tx, siteId, ids) {
    await tx.$queryRaw`
      SELECT id FROM store WHERE site_id = ${siteId}::uuid AND id = ANY (${[...ids]}::uuid[]) ORDER BY id FOR NO KEY UPDATE`;
    return storeThing.standing(tx, siteId, ids);
  },
  problems: async (tx, siteId, id, state) => [
    ...nameProblems(state),
    ...strayProblems(state, /^(name|retiredAt)$/),
    ...taken(state, await tx.store.count({ where: { siteId, name: nameOf(state), id: { not: id } } })),
    ...inUse(state, await tx.shelf.count({ where: { siteId, storeId: id, retiredAt: null } }), 'shelves stand in it'),
  ],
  async write(tx, siteId, id, state) {
    const data = { name: nameOf(state), retiredAt: retiredOf(state) };
    await tx.store.update({ where: { siteId_id: { siteId, id } }, data });
  },
};

/** A shelf of a store. Retired only when no motor stands on it. */
export const shelfThing: Thing = {
  async standing(tx, siteId, ids) {
    const rows = await tx.shelf.findMany({ where: { siteId, id: { in: [...ids] } } });
    return new Map(
      rows.map(({ id, version, name, storeId, retiredAt }) => [id, stands(version, { name, storeId, retiredAt })]),
    );
  },
  async locked(tx, siteId, ids) {
    await tx.$queryRaw`
      SELECT id FROM shelf WHERE site_id = ${siteId}::uuid AND id = ANY (${[...ids]}::uuid[]) ORDER BY id FOR NO KEY UPDATE`;
    return shelfThing.standing(tx, siteId, ids);
  },
  async problems(tx, siteId, id, state) {
    const storeId = String(state.storeId);
    const store = await tx.store.count({ where: { siteId, id: storeId, retiredAt: null } });
    return [
      ...nameProblems(state),
      ...strayProblems(state, /^(name|storeId|retiredAt)$/),
      ...(store === 0 ? [{ path: 'storeId', value: storeId, says: 'is not a store of this site' }] : []),
      ...taken(state, await tx.shelf.count({ where: { siteId, storeId, name: nameOf(state), id: { not: id } } })),
      ...inUse(state, await tx.motor.count({ where: { siteId, shelfId: id } }), 'motors stand on it'),
    ];
  },
  async write(tx, siteId, id, state) {
    const data = { name: nameOf(state), storeId: String(state.storeId), retiredAt: retiredOf(state) };
    await tx.shelf.update({ where: { siteId_id: { siteId, id } }, data });
  },
};

const stands = (version: number, fields: object): Stands => ({ version, state: stateOf(fields) });
const nameOf = (state: State) => String(state.name ?? '');
export const retiredOf = ({ retiredAt }: State): Date | null =>
  typeof retiredAt === 'string' ? new Date(retiredAt) : null;

const LONGEST_NAME = 80;
function nameProblems(state: State): Problem[] {
  const name = nameOf(state);
  const isGood = name === name.trim() && name !== '' && name.length <= LONGEST_NAME && !/[\p{Cc}\p{Cs}]/u.test(name);
  return isGood ? [] : [{ path: 'name', value: name, says: `must be one line of 1 to ${LONGEST_NAME} characters` }];
}

const strayProblems = (state: State, known: RegExp): Problem[] =>
  Object.keys(state)
    .filter((path) => !known.test(path))
    .map((path) => ({ path: path.slice(0, 80), value: null, says: 'is not a key known here' }));

const taken = (state: State, others: number): Problem[] =>
  others === 0 ? [] : [{ path: 'name', value: nameOf(state), says: 'is already the name of another' }];

const inUse = (state: State, users: number, words: string): Problem[] =>
  users === 0 || retiredOf(state) === null
    ? []
    : [{ path: 'retiredAt', value: null, says: `cannot be: ${users} ${words}` }];
