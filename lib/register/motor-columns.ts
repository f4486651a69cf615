import { Prisma } from '@/lib/db/generated/client';
import type { Motor } from '@/lib/plant/motor';
import { toldOnly } from './commands/told-only';

export type MotorPlace =
  | { place: 'in-set'; setId: string }
  | { place: 'on-shelf'; shelfId: string }
  | { place: 'at-repair' | 'on-order' | 'scrapped' };

/** What the register keeps of a motor beside its plate. */
export interface AboutMotor {
  maker?: string | null;
  serial?: string | null;
  condition?: string | null;
  rewinds?: number | null;
  note?: string | null;
  /** What stands on the plate and was not understood. */
  unread?: string | null;
}

export interface MotorWhole extends AboutMotor {
  motor: Motor;
  at: MotorPlace;
}

export function motorColumns({ motor, at, maker, serial, condition, rewinds, note }: MotorWhole) {
  const { shelvedOn, testedOn, insulationMohm } = motor.spare;
  return {
    plantNumber: motor.id,
    setId: null,
    shelfId: null,
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

export function plateColumns({ motor, unread }: Pick<MotorWhole, 'motor' | 'unread'>) {
  const { id: _n, ratings: _r, measured: _m, spare: _s, brake, classification, has, ...plate } = motor;
  return {
    ...plate,
    brakeTorqueNm: brake.torqueNm,
    brakeVolts: brake.volts,
    classification: classification === null ? Prisma.DbNull : toldOnly(classification),
    has: has ?? Prisma.DbNull,
    unread: unread ?? null,
  };
}

/** Power stays as stamped: where the plate says hp, the kW worked out from it is not kept. */
export const ratingColumns = ({ ratings }: Motor) =>
  ratings.map((row, i) => ({ ...row, line: i + 1, kw: row.hp === null ? row.kw : null }));
