import type { Auxiliary } from '@/lib/plant/motor-words';
import { type PartReading, partOf, problemAt } from '../part-reading';

export function auxiliary(text: string): PartReading {
  const found = KINDS.find(([pattern]) => pattern.test(text));
  return found ? partOf({ has: [found[1]] }) : problemAt('has', text, 'is not an auxiliary known here');
}

const KINDS: readonly [RegExp, Auxiliary][] = [
  [/PTC|THERMISTOR/i, 'thermistor'],
  [/THERMOSTAT/i, 'thermostat'],
  [/RTD|PT ?100/i, 'rtd'],
  [/HEATER/i, 'heater'],
  [/ENCODER/i, 'encoder'],
  [/INSULATED/i, 'insulated-bearing'],
  [/GROUND/i, 'shaft-ground'],
];
