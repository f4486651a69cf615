import type { Prisma } from '@/lib/db/generated/client';
import type { PumpSetInput } from '@/lib/plant/set';
import { toldOnly } from './told-only';

/** Surroundings as they are kept. A classification of null is a person's word ("unclassified"), so it stays. */
export function surroundingsTold(told: PumpSetInput['surroundings']): Prisma.InputJsonObject {
  if (!told) return {};
  return { ...toldOnly(told), ...(told.classification === null && { classification: null }) };
}
