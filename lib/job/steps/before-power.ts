import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { leastInsulationMohm } from '@/lib/standards/least-insulation';
import { figure } from '@/lib/units/figure';
import type { Predicted } from '../predicted';
import { box, type Step, value } from '../step';
import { isSplit } from './coupled';
import { isDriveFed, isThere } from './has';

export function beforePower(set: PumpSet, motor: Motor, predicted: Predicted): Step[] {
  return [
    value('before-power', 'insulation', insulationWords(set, motor, predicted), 'insulationMohm', 'Insulation', 'MΩ'),
    { id: 'rotation', stage: 'before-power', words: rotationWords(set), asks: { kind: 'rotation' } },
    value('before-power', 'overload', overloadWords(predicted), 'overloadA', 'Overload set to', 'A'),
    ...(isDriveFed(set) ? [box('before-power', 'drive-plate', 'The new plate is entered in the drive')] : []),
  ];
}

function insulationWords(set: PumpSet, motor: Motor, { windingVolts }: Predicted): string {
  const apart = [
    ...(isDriveFed(set) ? ['drive disconnected'] : []),
    ...(isThere('thermistor', set, motor) ? ['thermistors shorted'] : []),
  ];
  const least = windingVolts === null ? null : leastInsulationMohm(windingVolts);
  const words = `Insulation resistance before power${apart.length === 0 ? '' : `, ${apart.join(' and ')}`}`;
  return least === null ? words : `${words}: at least ${figure(least)} MΩ`;
}

/** A load of which nobody told the kind may be a rotary pump. */
function rotationWords(set: PumpSet): string {
  const backwards =
    set.load.kind === 'quadratic'
      ? ''
      : '. A rotary pump run backwards loses its relief protection; never bump a progressing-cavity pump dry';
  return `Rotation ${HOW[isSplit(set)]}${backwards}`;
}

const HOW = {
  coupling: 'with the coupling split, the key removed or held, the guard on',
  belts: 'with the belts off, the key removed or held, the guard on',
  not: 'by phase-rotation meter and lead marks, since the coupling cannot be split here',
} as const;

function overloadWords({ overload: { settingA, where, lineA, phaseA } }: Predicted): string {
  const lower = ', or lower where pump or gear limits it';
  if (lineA === null || phaseA === null) return `Overload set to the plate${lower}: read its amps at this voltage`;
  if (settingA === null)
    return `Overload set to the plate, ${figure(lineA)} A in the line or ${figure(phaseA)} A in the delta${lower}`;
  return `Overload set to the plate, ${figure(settingA)} A${where === 'phase' ? ' in the delta' : ''}${lower}`;
}
