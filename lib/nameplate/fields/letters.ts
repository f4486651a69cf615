import { motor } from '@/lib/plant/motor';
import { read } from '@/lib/plant/reading';
import { type PartReading, partOf, problemAt } from '../part-reading';
import type { PlateMotor } from '../plate-reading';

/** Takes `value` for `key` when the motor's own schema takes it; else the schema says what would be right. */
export function letters<K extends keyof PlateMotor>(key: K, value: unknown, text: string): PartReading {
  const checked = read(motor.shape[key], value);
  if (checked.ok) return partOf({ [key]: checked.value });
  return problemAt(String(key), text, checked.problems.map(({ says }) => says).join('; '));
}
