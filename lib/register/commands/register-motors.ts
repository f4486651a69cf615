import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { triedAgain } from '@/lib/db/tried-again';
import { type MotorInput, motor as schema } from '@/lib/plant/motor';
import { type Problem, read } from '@/lib/plant/reading';
import {
  type AboutMotor,
  type MotorPlace,
  type MotorWhole,
  motorColumns,
  plateColumns,
  ratingColumns,
} from '../motor-columns';
import { aboutProblems } from '../things/about-problems';
import { MOTOR_TEXTS, motorsStanding } from '../things/motor-thing';
import { motorPlaceProblems } from './new-places';
import { MOST_AT_ONCE, parts } from './parts';

export interface NewMotor extends AboutMotor {
  /** As the contract has it: `id` is the plant number; `measured` and `spare` go with it. */
  motor: MotorInput;
  at: MotorPlace;
}

export type RegisteredMotors =
  /** Plant number to the id it got. */
  { outcome: 'saved'; changeId: string; ids: Map<string, string> } | { outcome: 'refused'; problems: Problem[] };

/** Adds motors with their plates, all or none. A problem's path begins with the place in the list. */
export async function registerMotors(actor: Actor, motors: readonly NewMotor[]): Promise<RegisteredMotors> {
  return triedAgain(() => db.$transaction((tx) => registerMotorsIn(tx, actor, motors), { timeout: MOST_AT_ONCE }));
}

/** The same in a transaction that does more besides. */
export function registerMotorsIn(tx: Tx, actor: Actor, motors: readonly NewMotor[]): Promise<RegisteredMotors> {
  must(actor, 'motor.edit');
  return registerMotorsStep(tx, { ...actor, changeId: randomUUID() }, motors);
}

/** The step of it, under the change that `by` names. Refused, nothing was written. */
export async function registerMotorsStep(
  tx: Tx,
  by: Actor & { changeId: string },
  motors: readonly NewMotor[],
): Promise<RegisteredMotors> {
  const problems: Problem[] = [];
  const made = motors.flatMap((given, i) => {
    const told = read(schema, given.motor);
    const about = aboutProblems({ ...given, motor: null, at: null }, MOTOR_TEXTS);
    if (told.ok && about.length === 0) return [{ ...given, motor: told.value, id: randomUUID() }];
    const all = told.ok ? about : [...told.problems, ...about];
    problems.push(...all.map((problem) => ({ ...problem, path: `${i}.${problem.path}` })));
    return [];
  });
  if (problems.length > 0) return { outcome: 'refused', problems };
  const there = [
    ...(await taken(tx, by, made)),
    ...(await motorPlaceProblems(
      tx,
      by.siteId,
      made.map(({ at }) => at),
    )),
  ];
  if (there.length > 0) return { outcome: 'refused', problems: there };
  for (const part of parts(made)) await insert(tx, by, part);
  return { outcome: 'saved', changeId: by.changeId, ids: new Map(made.map(({ motor, id }) => [motor.id, id])) };
}

type Made = MotorWhole & { id: string };

/** Plant numbers that are in the register, or twice in the list. */
async function taken(tx: Tx, { siteId }: Actor, made: readonly Made[]): Promise<Problem[]> {
  const numbers = made.map(({ motor: { id } }) => id);
  const rows = await tx.motor.findMany({
    where: { siteId, plantNumber: { in: numbers } },
    select: { plantNumber: true },
  });
  const seen = new Set(rows.map(({ plantNumber }) => plantNumber));
  return made.flatMap(({ motor: { id } }, i) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    return [{ path: `${i}.id`, value: id, says: 'is already a motor of this site' }];
  });
}

async function insert(tx: Tx, by: Actor & { changeId: string }, made: readonly Made[]) {
  const { siteId } = by;
  await tx.motor.createMany({ data: made.map((one) => ({ siteId, id: one.id, ...motorColumns(one) })) });
  await tx.nameplate.createMany({ data: made.map((one) => ({ siteId, motorId: one.id, ...plateColumns(one) })) });
  await tx.rating.createMany({
    data: made.flatMap(({ id: motorId, motor }) => ratingColumns(motor).map((row) => ({ siteId, motorId, ...row }))),
  });
  const standing = await motorsStanding(
    tx,
    siteId,
    made.map(({ id }) => id),
  );
  await record(
    tx,
    by,
    ...[...standing].map(([id, { state }]) => ({
      action: 'motor.register',
      thing: 'motor',
      thingId: id,
      after: state,
    })),
  );
}
