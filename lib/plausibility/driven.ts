import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { servingRow } from './fed';

/** Motor speed over pump speed: told, or 1 where shaft stands to shaft. Null: not known. */
export function ratioOf({ coupling }: PumpSet): number | null {
  if (coupling.ratio !== null) return coupling.ratio;
  return coupling.type === 'coupling' || coupling.type === 'close-coupled' ? 1 : null;
}

/** What the pump asks of the motor, as far as the figures tell it. */
export interface Driven {
  motorKw: number;
  /** The sum as a person would write it. */
  reckoned: string;
  /** The figures it rests on. */
  figures: Readonly<Record<string, number | string | null>>;
}

/**
 * The load at the motor's shaft at the speed its plate gives it, in kW. A gear whose efficiency nobody told counts as
 * lossless: then it is the least it can be. Null without a load, or where it is told for another speed and its kind is not.
 */
export function drivenBy(set: PumpSet, motor: Motor): Driven | null {
  const { load, coupling, supply } = set;
  const { shaftKw, atPumpRpm, kind } = load;
  if (shaftKw === null) return null;
  const ratio = ratioOf(set);
  const plateRpm = supply.start === 'drive' ? null : (servingRow(set, motor)?.rpm ?? null);
  const pumpRpm = ratio === null || plateRpm === null ? null : plateRpm / ratio;
  const faster = pumpRpm === null || atPumpRpm === null ? 1 : pumpRpm / atPumpRpm;
  const isSameSpeed = Math.abs(faster - 1) <= SAME_SPEED;
  if (!isSameSpeed && kind === null) return null;
  const scale = isSameSpeed ? 1 : faster ** (kind === 'quadratic' ? 3 : 1);
  const efficiency =
    coupling.efficiencyPct !== null ? coupling.efficiencyPct / 100 : coupling.type === 'belt' ? BELT : 1;
  return {
    motorKw: (shaftKw * scale) / efficiency,
    reckoned: `${[
      `${short(shaftKw)} kW at the pump`,
      ...(scale === 1 ? [] : [`× ${short(scale)} for ${short(pumpRpm as number)} rpm`]),
      ...(efficiency === 1 ? [] : [`/ ${short(efficiency)}`]),
    ].join(' ')} = ${short((shaftKw * scale) / efficiency)} kW at the motor`,
    figures: { shaftKw, atPumpRpm, pumpRpm, kind, efficiency },
  };
}

const short = (value: number) => Number(value.toPrecision(3));
/** Slip and rounding: a twentieth is the same speed. */
const SAME_SPEED = 0.05;
/** A V-belt well kept (common practice, no source). */
const BELT = 0.95;
