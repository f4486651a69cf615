import type { Prisma } from '@/lib/db/generated/client';
import { type PumpSet, set } from '@/lib/plant/set';
import { MOTOR_ROW, motorOfRow } from './motor-row';

/** What must be read of a set so that it can be judged. */
export const SET_ROW = {
  area: true,
  pump: true,
  supply: true,
  motor: { include: MOTOR_ROW },
} as const satisfies Prisma.PumpSetInclude;

export type SetRow = Prisma.PumpSetGetPayload<{ include: typeof SET_ROW }>;

/**
 * A set's rows as the judgement takes it: the motor now in it is the failed one, and the area's surroundings
 * hold where the set tells none of its own.
 */
export function setOfRow(row: SetRow): PumpSet {
  const { area, supply, motor } = row;
  return {
    ...set.parse({
      tag: row.tag,
      mounting: row.mounting,
      shaftDirection: row.shaftDirection,
      rotation: row.rotation,
      seat: row.seat,
      coupling: row.coupling,
      base: row.base,
      supply: supply && {
        ...object(supply.starter),
        phases: supply.phases,
        volts: supply.volts,
        hertz: supply.hertz,
        start: supply.start,
      },
      load: row.load,
      surroundings: { ...object(area?.surroundings), ...object(row.surroundings) },
      needs: row.needs,
    }),
    failed: motor && motorOfRow(motor),
  };
}

/** The database holds these columns to be objects; keys with an unknown value are left out when written. */
const object = (json: unknown): Record<string, unknown> =>
  typeof json === 'object' && json !== null && !Array.isArray(json) ? (json as Record<string, unknown>) : {};
