import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { box, type Step } from '../step';

export function takeOut({ failed }: PumpSet, motor: Motor): Step[] {
  return [
    box('take-out', 'lift', liftWords(failed, motor)),
    ...(failed === null ? [] : [box('take-out', 'why-failed', 'Why the old motor failed is found and written down')]),
    box('take-out', 'turn-by-hand', 'The pump turns by hand, before another motor is fitted'),
  ];
}

function liftWords(failed: Motor | null, motor: Motor): string {
  const masses = [...(failed === null ? [] : [`out ${massOf(failed)}`]), `in ${massOf(motor)}`].join(', ');
  return `Lift by the mass on the plate: ${masses}. An eyebolt lifts the motor alone`;
}

const massOf = ({ massKg }: Motor): string =>
  massKg === null ? 'not in the register, weigh it' : `${figure(massKg)} kg`;
