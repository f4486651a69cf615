import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { box, type Step } from '../step';
import { isDriveFed, isThere } from './has';

export function makeSafe(set: PumpSet, motor: Motor): Step[] {
  return [
    box('make-safe', 'isolate', 'Isolate, lock out and prove dead'),
    box('make-safe', 'second-feeds', `Second feeds too: ${feedsOf(set, motor).join(', ')}`),
    ...(isDriveFed(set)
      ? [box('make-safe', 'dc-link', 'Wait the drive’s discharge time, then prove its DC link dead')]
      : []),
    box('make-safe', 'pressure-heat', 'Pressure relieved, product and motor cooled'),
  ];
}

function feedsOf(set: PumpSet, motor: Motor): string[] {
  return [
    ...(isThere('heater', set, motor) ? ['heater'] : []),
    ...(isThere('brake', set, motor) ? ['brake'] : []),
    'control',
  ];
}
