import { contextOf, type JudgedBy } from '@/lib/matching/context';
import { fedBy } from '@/lib/matching/context/fed-by';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type OverloadSetting, overloadSettingOf } from './overload-setting';

/** What the readings of a job are held against. Amps in the line; null: not known. */
export interface Predicted {
  phases: 1 | 3 | null;
  /** Running at the greatest continuous duty, with the speed put right where the findings ask for it. */
  amps: number | null;
  /** Why no running current can be told; null where it can. */
  whyNoAmps: string | null;
  /** Full-load amps of the plate at this supply. */
  plateA: number | null;
  /** 1 where the plate's may not be leaned on, or prints none. */
  serviceFactor: number;
  /** The highest volts the winding is rated for: they decide the least insulation resistance. */
  windingVolts: number | null;
  /** Running, else full-load speed: it decides how well the shafts must line up. */
  motorRpm: number | null;
  overload: OverloadSetting;
}

export function predictedOf(set: PumpSet, motor: Motor, by: JudgedBy): Predicted {
  const context = contextOf(set, motor, by);
  const { row, point } = context;
  const running = point.restored ?? point;
  return {
    phases: fedBy(set).phases,
    amps: running.amps,
    whyNoAmps: running.amps === null ? whyNoAmps(running.motorKw, row.plate?.amps ?? null, point.why) : null,
    plateA: row.amps,
    serviceFactor: row.serviceFactor,
    windingVolts: windingVoltsOf(motor),
    motorRpm: running.motorRpm ?? row.rpm ?? row.synchronousRpm,
    overload: overloadSettingOf(set, motor, context),
  };
}

function whyNoAmps(motorKw: number | null, plateA: number | null, why: string | null): string {
  if (why !== null) return why;
  if (motorKw === null) return 'The power that the pump asks of the motor is not known.';
  if (plateA === null) return 'The plate’s amps at this voltage are not known.';
  return 'The load is under half and the plate prints no power factor: no current can be worked out there.';
}

function windingVoltsOf({ ratings }: Motor): number | null {
  const printed = ratings.flatMap(({ volts, voltsMax }) => [volts, voltsMax]).filter((one) => one !== null);
  return printed.length === 0 ? null : Math.max(...printed);
}
