import type { Motor } from '@/lib/plant/motor';

/** Motors alike in all that a finding reads: one stands for all. */
export interface MotorKind {
  one: Motor;
  members: Motor[];
}

/** Gathers motors that differ only in their number and in what the shelf did to them. */
export const kindsOf = (motors: readonly Motor[]): MotorKind[] => gathered(motors, plateOf);

/** All that a finding reads of a motor, as a text; worked out once for each. */
function plateOf(motor: Motor): string {
  const known = plates.get(motor);
  if (known !== undefined) return known;
  const plate = JSON.stringify({ ...motor, id: null, spare: null });
  plates.set(motor, plate);
  return plate;
}
const plates = new WeakMap<Motor, string>();

/** Gathers by any key; each kind keeps its members in the order they came. */
export function gathered(motors: readonly Motor[], keyOf: (motor: Motor) => unknown): MotorKind[] {
  const kinds = new Map<unknown, MotorKind>();
  for (const motor of motors) {
    const key = keyOf(motor);
    const known = kinds.get(key);
    if (known === undefined) kinds.set(key, { one: motor, members: [motor] });
    else known.members.push(motor);
  }
  return [...kinds.values()];
}
