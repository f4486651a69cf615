import type { Prisma } from '@/lib/db/generated/client';
import { type Motor, motor } from '@/lib/plant/motor';

/** What must be read of a motor so that it can be judged. */
export const MOTOR_ROW = {
  nameplate: { include: { ratings: { orderBy: { line: 'asc' } } } },
} as const satisfies Prisma.MotorInclude;

export type MotorRow = Prisma.MotorGetPayload<{ include: typeof MOTOR_ROW }>;

/** Large enough for every motor of a big site; the oldest are dropped first. */
const KEPT = 20_000;
const kept = new Map<string, Motor>();

/**
 * A motor's rows as the judgement takes it; its `id` is the plant number. The same version gives the same object,
 * so that what was worked out for it once need not be again. Throws when the rows do not make a motor: what is
 * written goes through the same schema, so that is a fault of ours.
 */
export function motorOfRow(row: MotorRow): Motor {
  const key = `${row.siteId} ${row.id} ${row.version}`;
  const before = kept.get(key);
  if (before) return before;
  const made = motor.parse(inputOfRow(row));
  if (kept.size >= KEPT) for (const oldest of kept.keys()) if (kept.delete(oldest)) break;
  kept.set(key, made);
  return made;
}

/** A register that was restored from a backup gives versions a second time. */
export const forgetMotors = (): void => kept.clear();

function inputOfRow(row: MotorRow): unknown {
  const spare = { shelvedOn: day(row.shelvedOn), testedOn: day(row.testedOn), insulationMohm: row.insulationMohm };
  const told = { id: row.plantNumber, measured: row.measured, spare };
  if (row.nameplate === null) return told;
  const { siteId: _s, motorId: _m, unread: _u, brakeTorqueNm, brakeVolts, ratings, ...plate } = row.nameplate;
  return {
    ...told,
    ...plate,
    brake: { torqueNm: brakeTorqueNm, volts: brakeVolts },
    ratings: ratings.map(({ siteId: _s, motorId: _m, line: _l, ...rating }) => rating),
  };
}

/** A date column comes as midnight UTC. */
export const day = (date: Date | null): string | null => (date === null ? null : date.toISOString().slice(0, 10));
