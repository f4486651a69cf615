import type { Problem } from '@/lib/plant/reading';

export interface Refused {
  outcome: 'refused';
  problems: Problem[];
}

/** Refuses for one reason. What was typed is not repeated: it may be a secret. */
export const refused = (path: string, says: string): Refused => ({
  outcome: 'refused',
  problems: [{ path, value: null, says }],
});
