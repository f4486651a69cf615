import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { fedOf } from '../fed';

/** Has the motor the phases it is fed with? On a drive there are three. Not asked where either is not known. */
export function supplyPhases(set: PumpSet, motor: Motor | null): Doubt | null {
  const { phases, isOnDrive } = fedOf(set);
  if (phases === null || motor === null || motor.phases === null || motor.phases === phases) return null;
  return {
    rule: 'supply-phases',
    thing: 'set',
    grade: 'wrong',
    field: isOnDrive ? 'supply.start' : 'supply.phases',
    have: phases,
    expected: motor.phases,
    unit: null,
    says: `${isOnDrive ? 'A drive gives 3 phases' : `The supply has ${phases} ${phases === 1 ? 'phase' : 'phases'}`}; ${motor.id} in it has ${motor.phases} on its plate.`,
    cite: 'common practice, no source',
    figures: figuresOf({ phases, motor: motor.phases, start: set.supply.start }),
  };
}
