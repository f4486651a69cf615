import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { Prisma } from '@/lib/db/generated/client';
import { type Motor, type MotorInput, motor as schema } from '@/lib/plant/motor';
import { type Problem, read } from '@/lib/plant/reading';
import { MOST_AT_ONCE, parts } from './parts';
import { toldOnly } from './told-only';

export type NewPlace =
  | { place: 'in-set'; setId: string }
  | { place: 'on-shelf'; shelfId: string }
  | { place: 'at-repair' | 'on-order' | 'scrapped' };

export interface NewMotor {
  /** As the contract has it: `id` is the plant number; `measured` and `spare` go with it. */
  motor: MotorInput;
  at: NewPlace;
  maker?: string | null;
  serial?: string | null;
  condition?: string | null;
  rewinds?: number | null;
  note?: string | null;
  /** What stands on the plate and was not understood. */
  unread?: string | null;
}

export type RegisteredMotors =
  /** Plant number to the id it got. */
  { outcome: 'saved'; ids: Map<string, string> } | { outcome: 'refused'; problems: Problem[] };

/** Adds motors with their plates, all or none. A problem's path begins with the place in the list. */
export async function registerMotors(actor: Actor, motors: readonly NewMotor[]): Promise<RegisteredMotors> {
  must(actor, 'motor.edit');
  const problems: Problem[] = [];
  const made = motors.flatMap((given, i) => {
    const told = read(schema, given.motor);
    if (told.ok) return [{ ...given, motor: told.value, id: randomUUID() }];
    problems.push(...told.problems.map((problem) => ({ ...problem, path: `${i}.${problem.path}` })));
    return [];
  });
  if (problems.length > 0) return { outcome: 'refused', problems };
  return db.$transaction(
    async (tx) => {
      const there = await taken(tx, actor, made);
      if (there.length > 0) return { outcome: 'refused', problems: there };
      for (const part of parts(made)) await insert(tx, actor, part);
      return { outcome: 'saved', ids: new Map(made.map(({ motor, id }) => [motor.id, id])) };
    },
    { timeout: MOST_AT_ONCE },
  );
}

type Made = Omit<NewMotor, 'motor'> & { motor: Motor; id: string };

/** Plant numbers that are in the register, or twice in the list. */
async function taken(tx: Tx, { siteId }: Actor, made: readonly Made[]): Promise<Problem[]> {
  const rows = await tx.motor.findMany({ where: { siteId }, select: { plantNumber: true } });
  const seen = new Set(rows.map(({ plantNumber }) => plantNumber));
  return made.flatMap(({ motor: { id } }, i) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    return [{ path: `${i}.id`, value: id, says: 'is already a motor of this site' }];
  });
}

async function insert(tx: Tx, actor: Actor, made: readonly Made[]) {
  const { siteId } = actor;
  await tx.motor.createMany({ data: made.map((one) => motorRow(siteId, one)) });
  await tx.nameplate.createMany({ data: made.map((one) => plateRow(siteId, one)) });
  await tx.rating.createMany({ data: made.flatMap((one) => ratingRows(siteId, one)) });
  await record(
    tx,
    actor,
    ...made.map(({ id, motor, at }) => ({
      action: 'motor.register',
      thing: 'motor',
      thingId: id,
      after: { plantNumber: motor.id, ...at },
    })),
  );
}

function motorRow(siteId: string, { id, motor, at, maker, serial, condition, rewinds, note }: Made) {
  const { shelvedOn, testedOn, insulationMohm } = motor.spare;
  return {
    siteId,
    id,
    plantNumber: motor.id,
    ...at,
    maker: maker ?? null,
    serial: serial ?? null,
    condition: condition ?? null,
    rewinds: rewinds ?? null,
    note: note ?? null,
    shelvedOn: shelvedOn && new Date(shelvedOn),
    testedOn: testedOn && new Date(testedOn),
    insulationMohm,
    measured: toldOnly(motor.measured),
  };
}

function plateRow(siteId: string, { id: motorId, motor, unread }: Made) {
  const { id: _n, ratings: _r, measured: _m, spare: _s, brake, classification, has, ...plate } = motor;
  return {
    ...plate,
    siteId,
    motorId,
    brakeTorqueNm: brake.torqueNm,
    brakeVolts: brake.volts,
    classification: classification === null ? Prisma.DbNull : toldOnly(classification),
    has: has ?? Prisma.DbNull,
    unread: unread ?? null,
  };
}

/** Power stays as stamped: where the plate says hp, the kW worked out from it is not kept. */
const ratingRows = (siteId: string, { id: motorId, motor }: Made) =>
  motor.ratings.map((row, i) => ({ ...row, siteId, motorId, line: i + 1, kw: row.hp === null ? row.kw : null }));
