import type { Problem } from '@/lib/plant/reading';
import type { PlateMotor } from './plate-reading';

/** Parts of one motor together. Where two say different things neither is taken: a problem names both. */
export function merge(parts: readonly PlateMotor[]): { motor: PlateMotor; problems: Problem[] } {
  const said = new Map<keyof PlateMotor, string[]>();
  const motor: PlateMotor = {};
  const has = new Set<NonNullable<PlateMotor['has']>[number]>();
  for (const part of parts) {
    for (const one of part.has ?? []) has.add(one);
    for (const key of Object.keys(part) as (keyof PlateMotor)[]) {
      if (key === 'has') continue;
      const text = typeof part[key] === 'object' ? JSON.stringify(part[key]) : String(part[key]);
      const others = said.get(key) ?? [];
      if (!others.includes(text)) said.set(key, [...others, text]);
    }
    Object.assign(motor, part);
  }
  if (has.size > 0) motor.has = [...has].sort();
  const problems: Problem[] = [];
  for (const [key, texts] of said) {
    if (texts.length < 2) continue;
    delete motor[key];
    const sorted = texts.toSorted();
    problems.push({
      path: key,
      value: sorted.join(' / '),
      says: `is stamped as ${sorted.join(' and as ')}: which one holds?`,
    });
  }
  return { motor, problems };
}
