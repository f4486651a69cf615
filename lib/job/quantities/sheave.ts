import type { Finding } from '@/lib/matching/finding';
import type { Quantity } from './quantity';

/** The motor's sheave, as the speed finding has it. Null: it stays. */
export function sheave(findings: readonly Finding[]): Quantity | null {
  const work = findings.find(({ criterion, work }) => criterion === 'speed' && work?.id === 'sheave')?.work ?? null;
  return work === null ? null : { id: 'sheave', name: 'Sheave on the motor', value: 'new', detail: work.what };
}
