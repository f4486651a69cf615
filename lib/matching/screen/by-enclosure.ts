import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { enclosure } from '../criteria/surroundings/enclosure';

export const byEnclosure = {
  criteria: [enclosure],
  ofSet: ({ surroundings, failed }: PumpSet): string => [surroundings.ip, failed?.ip, failed?.enclosure].join('|'),
  ofMotor: ({ ip, enclosure }: Motor): string => `${ip}|${enclosure}`,
};
