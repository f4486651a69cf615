import type { Problem } from '@/lib/plant/reading';
import type { Fact } from './field-name';
import { merge } from './merge';
import type { PlateReading } from './plate-reading';
import { ratingsOf } from './ratings-of';
import { readers } from './readers';

/** Puts what was stamped together: the parts that a motor has once, then its rows of ratings. */
export function motorOf(facts: readonly Fact[]): PlateReading {
  const problems: Problem[] = [];
  const unread: string[] = [];
  const isFrameNamed = facts.some(({ field }) => field === 'frame');
  const parts = facts.flatMap((fact) => {
    if (fact.field === 'frameInType' && isFrameNamed) {
      unread.push(fact.text);
      return [];
    }
    const reader = readers[fact.field];
    if (!reader) return [];
    const read = reader(fact.text);
    problems.push(...(read.ok ? read.doubts : read.problems));
    if (read.ok) return [read.value];
    // An area mark is for a competent person: as it stood, whatever is said about it.
    if (fact.field === 'area') unread.push(fact.text);
    return [];
  });
  const merged = merge(parts);
  const rows = ratingsOf(facts, merged.motor);
  return {
    motor: { ...merged.motor, ...rows.motor },
    unread,
    problems: [...problems, ...merged.problems, ...rows.problems],
  };
}
