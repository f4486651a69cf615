import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import type { Motor } from '@/lib/plant/motor';
import { isId } from '../is-id';
import { labelCodeOf } from '../label-code-of';
import { type MotorFilter, whereMotors } from '../motor-filter';
import { MOTOR_ROW, motorOfRow } from '../motor-row';
import { type SetFilter, whereSets } from '../set-filter';

/** What a label tells beside its code. */
export type LabelLine =
  | { thing: 'set'; code: string; name: string; serves: string | null }
  | { thing: 'motor'; code: string; name: string; motor: Motor };

/** What labels are asked for: records by name, or those of a list. `ids` null: all that the filter lets through. */
export type LabelsAsked =
  | { by: 'name'; tags: readonly string[]; numbers: readonly string[]; codes: readonly string[] }
  | { by: 'sets'; filter: SetFilter; ids: readonly string[] | null }
  | { by: 'motors'; filter: MotorFilter; storeId: string | null; ids: readonly string[] | null };

/** As many are named one by one. */
const MOST_NAMED = 500;

/** What stands on the labels asked for, sets before motors, each by name; `all` counts those beyond the part too. */
export async function labelLines(
  actor: Actor,
  asked: LabelsAsked,
  { skip, take }: { skip: number; take: number },
): Promise<{ lines: LabelLine[]; all: number }> {
  must(actor, 'register.read');
  switch (asked.by) {
    case 'sets':
      return ofSets({ ...whereSets(actor.siteId, asked.filter), ...within(asked.ids) }, skip, take);
    case 'motors': {
      const { filter, storeId, ids } = asked;
      const inStore = storeId === null ? {} : { shelf: { storeId } };
      return ofMotors({ ...whereMotors(actor.siteId, filter), ...inStore, ...within(ids) }, skip, take);
    }
    case 'name': {
      const { siteId } = actor;
      const code = { in: asked.codes.slice(0, MOST_NAMED) };
      const tag = { in: asked.tags.slice(0, MOST_NAMED) };
      const plantNumber = { in: asked.numbers.slice(0, MOST_NAMED) };
      const sets = await ofSets({ siteId, OR: [{ tag }, { code }] }, skip, take);
      const left = take - sets.lines.length;
      const motors = await ofMotors({ siteId, OR: [{ plantNumber }, { code }] }, Math.max(0, skip - sets.all), left);
      return { lines: [...sets.lines, ...motors.lines], all: sets.all + motors.all };
    }
  }
}

const within = (ids: readonly string[] | null) =>
  ids === null ? {} : { id: { in: ids.filter((id) => isId(id)).slice(0, MOST_NAMED) } };

async function ofSets(where: Prisma.PumpSetWhereInput, skip: number, take: number) {
  const select = { id: true, code: true, tag: true, service: true, pump: { select: { description: true } } } as const;
  const [rows, all] = await Promise.all([
    db.pumpSet.findMany({ where, select, orderBy: { tag: 'asc' }, skip, take }),
    db.pumpSet.count({ where }),
  ]);
  const lines = rows.map((row): LabelLine => {
    const told = [row.service, row.pump?.description].filter((part) => part != null);
    const serves = told.length === 0 ? null : told.join(', ');
    return { thing: 'set', code: labelCodeOf(row), name: row.tag, serves };
  });
  return { lines, all };
}

async function ofMotors(where: Prisma.MotorWhereInput, skip: number, take: number) {
  const [rows, all] = await Promise.all([
    db.motor.findMany({ where, include: MOTOR_ROW, orderBy: { plantNumber: 'asc' }, skip, take }),
    db.motor.count({ where }),
  ]);
  const lines = rows.map((row): LabelLine => {
    const motor = motorOfRow(row);
    return { thing: 'motor', code: labelCodeOf(row), name: motor.id, motor };
  });
  return { lines, all };
}
