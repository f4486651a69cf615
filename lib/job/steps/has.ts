import type { Motor } from '@/lib/plant/motor';
import type { Auxiliary } from '@/lib/plant/motor-words';
import type { PumpSet } from '@/lib/plant/set';

/** True where the set uses it, or either motor has it. */
export const isThere = (auxiliary: Auxiliary, { needs, failed }: PumpSet, motor: Motor): boolean =>
  needs.includes(auxiliary) || [motor, failed].some((one) => one?.has?.includes(auxiliary) === true);

export const isDriveFed = ({ supply }: PumpSet): boolean => supply.start === 'drive';
