import type { Finding } from '@/lib/matching/finding';
import type { Urgency } from './finding';

/**
 * How soon something is to be done about an answer of the engine: `atBlock` where it blocks, planned where a person or work
 * settles it, a look where a reading tells. Null: it is fit, or good to know and no more.
 */
export function urgencyOf({ grade, by }: Finding, atBlock: Urgency = 'at-once'): Urgency | null {
  switch (grade) {
    case 'block':
      return atBlock;
    case 'check':
      return by === 'reading' ? 'look' : 'plan';
    case 'work':
      return 'plan';
    case 'note':
    case 'ok':
      return null;
  }
}
