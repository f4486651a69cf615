import type { Tx } from '@/lib/db/client';
import { objectOf, type State, stateOf } from '@/lib/fields/state';
import { type Problem, read } from '@/lib/plant/reading';
import { type PumpSetInput, set as schema } from '@/lib/plant/set';
import { type NewPump, setColumns, supplyColumns } from '../set-columns';
import { aboutProblems } from './about-problems';
import { retiredOf } from './place-things';
import type { Stands, Thing } from './thing';

/** A set with its pump and its supply, as one record. Retired only when no motor is in it. */
export const setThing: Thing = {
  standing: setsStanding,

  async locked(tx, siteId, ids) {
    await tx.$queryRaw`
      SELECT id FROM pump_set WHERE site_id = ${siteId}::uuid AND id = ANY (${[...ids]}::uuid[])
      ORDER BY id FOR NO KEY UPDATE`;
    return setsStanding(tx, siteId, ids);
  },

  async problems(tx, siteId, id, state) {
    const { input, about } = setPartsOf(state);
    const told = read(schema, input);
    const areaId = state.areaId ?? null;
    const area = areaId === null ? 1 : await tx.area.count({ where: { siteId, id: String(areaId), retiredAt: null } });
    const tag = told.ok ? told.value.tag : String(state.tag ?? '');
    const others = await tx.pumpSet.count({ where: { siteId, tag, id: { not: id } } });
    const motors = retiredOf(state) === null ? 0 : await tx.motor.count({ where: { siteId, setId: id } });
    return [
      ...(told.ok ? [] : told.problems),
      ...aboutProblems(about, SET_TEXTS),
      ...criticalityProblems(state),
      ...(about.pump && (about.pump.description ?? '') === ''
        ? [{ path: 'pump.description', value: null, says: 'is missing: say what pump it is' }]
        : []),
      ...(area === 0 ? [{ path: 'areaId', value: String(areaId), says: 'is not an area of this site' }] : []),
      ...(others > 0 ? [{ path: 'tag', value: tag, says: 'is already a set of this site' }] : []),
      ...(motors > 0 ? [{ path: 'retiredAt', value: null, says: 'cannot be: a motor is in it' }] : []),
    ];
  },

  async write(tx, siteId, id, state) {
    const { input, about } = setPartsOf(state);
    const whole = { set: schema.parse(input), input, ...about };
    const row = await tx.pumpSet.findUniqueOrThrow({
      where: { siteId_id: { siteId, id } },
      select: { pumpId: true, supplyId: true },
    });
    const pumpId = await writePump(tx, siteId, row.pumpId, about.pump);
    const supplyId = await writeSupply(tx, siteId, row.supplyId, input.supply ? supplyColumns(whole) : null);
    await tx.pumpSet.update({
      where: { siteId_id: { siteId, id } },
      // The moment is written so that the version counts changes of pump and supply too.
      data: { ...setColumns(whole), pumpId, supplyId, retiredAt: retiredOf(state), changedAt: new Date() },
    });
  },
};

/** Sets as they stand, without a lock. */
export async function setsStanding(tx: Tx, siteId: string, ids: readonly string[]): Promise<Map<string, Stands>> {
  const rows = await tx.pumpSet.findMany({
    where: { siteId, id: { in: [...ids] } },
    include: { pump: true, supply: true },
  });
  return new Map(
    rows.map(({ id, version, pump, supply, ...row }) => {
      const { tag, service, criticality, areaId, mounting, shaftDirection, rotation, note, retiredAt } = row;
      const { seat, coupling, base, load, surroundings, needs } = row;
      const state = stateOf({
        ...{ tag, service, criticality, areaId, mounting, shaftDirection, rotation, note, retiredAt },
        ...{ seat, coupling, base, load, surroundings, needs },
        pump: pump && { description: pump.description, kind: pump.kind, maker: pump.maker, serial: pump.serial },
        supply: supply && {
          name: supply.name,
          ...{ phases: supply.phases, volts: supply.volts, hertz: supply.hertz, start: supply.start },
          ...(supply.starter as object),
        },
      });
      return [id, { version, state }];
    }),
  );
}

type About = {
  pump: NewPump | null;
  supplyName: string | null;
  service: string | null;
  note: string | null;
  criticality: number | null;
  areaId: string | null;
};

/** What of a state is the contract's, and what the register keeps beside it. */
export function setPartsOf(state: State): { input: PumpSetInput; about: About } {
  const { service, criticality, areaId, note, pump, supply, retiredAt: _r, ...rest } = objectOf(state);
  const { name: supplyName, ...fed } = (supply ?? {}) as Record<string, unknown>;
  return {
    input: { ...rest, ...(supply !== undefined && { supply: fed }) } as PumpSetInput,
    about: {
      pump: (pump ?? null) as NewPump | null,
      supplyName: (supplyName ?? null) as string | null,
      service: (service ?? null) as string | null,
      note: (note ?? null) as string | null,
      criticality: (criticality ?? null) as number | null,
      areaId: (areaId ?? null) as string | null,
    },
  };
}

/** The longest that each text beside the contract may be. */
export const SET_TEXTS = {
  service: 200,
  note: 2_000,
  supplyName: 80,
  'pump.description': 200,
  'pump.kind': 60,
  'pump.maker': 80,
  'pump.serial': 60,
};

function criticalityProblems({ criticality }: State): Problem[] {
  if (criticality === undefined || [1, 2, 3, 4].includes(Number(criticality))) return [];
  return [{ path: 'criticality', value: String(criticality), says: 'must be 1 (stops the plant) to 4 (can wait)' }];
}

async function writePump(tx: Tx, siteId: string, id: string | null, pump: NewPump | null): Promise<string | null> {
  if (pump === null) return null;
  const { description, kind = null, maker = null, serial = null } = pump;
  const data = { description, kind, maker, serial };
  if (id === null) return (await tx.pump.create({ data: { siteId, ...data }, select: { id: true } })).id;
  await tx.pump.update({ where: { siteId_id: { siteId, id } }, data });
  return id;
}

async function writeSupply(tx: Tx, siteId: string, id: string | null, data: ReturnType<typeof supplyColumns> | null) {
  if (data === null) return null;
  if (id === null) return (await tx.supply.create({ data: { siteId, ...data }, select: { id: true } })).id;
  await tx.supply.update({ where: { siteId_id: { siteId, id } }, data });
  return id;
}
