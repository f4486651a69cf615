import type { KeptMotor, KeptPlant, KeptSet } from './kept-plant';
import type { Reading } from './reading';

/** The plant of a reading. What is as it was in the plant before is the very same object; so is the plant itself. */
export function plantOf(reading: Reading, before: { plant: KeptPlant; of: Reading } | null): KeptPlant {
  if (before !== null && isSame(reading, before.of)) return before.plant;
  const bySet = new Map<string, KeptMotor>();
  const motors = new Map<string, KeptMotor>();
  for (const [id, { motor }] of reading.motors) {
    motors.set(id, motor);
    if (motor.setId !== null) bySet.set(motor.setId, motor);
  }
  const sets = new Map<string, KeptSet>();
  for (const [id, read] of reading.sets) {
    const held = bySet.get(id) ?? null;
    const old = before?.plant.sets.get(id);
    const isOld = old !== undefined && before?.of.sets.get(id) === read && old.set.failed === (held?.motor ?? null);
    if (isOld && old.motorId === (held?.motorId ?? null)) {
      sets.set(id, old);
      continue;
    }
    const set = { ...read.set, failed: held?.motor ?? null };
    sets.set(id, { ...read.head, motorId: held?.motorId ?? null, set });
  }
  return { ...reading.site, sets, motors };
}

const isSame = (a: Reading, b: Reading): boolean =>
  a.register === b.register &&
  a.sets === b.sets &&
  a.motors === b.motors &&
  JSON.stringify(a.site) === JSON.stringify(b.site);
