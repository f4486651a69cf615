import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { box, type Step } from '../step';

export function beforeRestart(set: PumpSet, motor: Motor): Step[] {
  const { washdown, classification } = set.surroundings;
  const isClassified = classification != null || isMarked(motor) || isMarked(set.failed);
  return [
    box('before-restart', 'valves', 'Valves open'),
    box('before-restart', 'relief', 'Relief in service'),
    box('before-restart', 'guard', 'Guard on'),
    box('before-restart', 'earth-bond', 'Earth bond on and tight'),
    box('before-restart', 'interlocks', 'Interlocks work'),
    ...(washdown === true ? [box('before-restart', 'hygiene', 'Hygiene release: tools and shims counted')] : []),
    ...(isClassified ? [box('before-restart', 'area', 'Area-classified: released by a competent person')] : []),
  ];
}

/** A motor with an area mark stands where one is needed, or is about to. */
const isMarked = (motor: Motor | null): boolean => motor !== null && motor.classification !== null;
