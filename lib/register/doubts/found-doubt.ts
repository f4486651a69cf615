import type { Doubt } from '@/lib/plausibility/doubt';

/** A doubt and the record it is about; `name` is the set's tag or the motor's plant number. */
export interface FoundDoubt {
  thing: 'set' | 'motor';
  thingId: string;
  name: string;
  doubt: Doubt;
}
