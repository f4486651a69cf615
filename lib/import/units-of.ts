import type { Field, FieldId } from './field';
import { QUANTITIES } from './quantity';

/** The units that a field's figures can be in, the kept one first; of a frame, the standards it can be of. */
export function unitsOf({ shape, id }: Field): readonly string[] {
  if (shape.as === 'figure') return Object.keys(QUANTITIES[shape.quantity].units);
  return shape.as === 'plate' ? (PLATE_UNITS[id] ?? []) : [];
}

const POWERS = ['kw', 'hp', 'w', 'ps'];
const PLATE_UNITS: Readonly<Record<FieldId, readonly string[]>> = {
  frame: ['nema', 'iec'],
  power: POWERS,
  powerHp: POWERS,
  powerKw: POWERS,
  volts: ['v'],
  hertz: ['hz'],
  rpm: ['rpm'],
  amps: ['a'],
  efficiencyPct: ['%'],
};
