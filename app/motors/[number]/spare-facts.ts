import type { Motor } from '@/lib/plant/motor';
import type { KnownMotor } from '@/lib/register/queries/motor-by-number';
import { figure } from '@/lib/units/figure';

/** What the store knows of a motor: tests, shelf time, condition. Not known says so. */
export function spareFacts({ spare }: Motor, row: KnownMotor['row']) {
  const { shelvedOn, testedOn, insulationMohm } = spare;
  const { condition, rewinds, note } = row;
  return [
    { label: 'Condition', value: condition ?? 'not told' },
    { label: 'Rewinds', value: rewinds === null ? 'not told' : String(rewinds) },
    { label: 'On the shelf since', value: shelvedOn ?? 'not told' },
    { label: 'Last tested', value: testedOn ?? 'no test is recorded' },
    { label: 'Insulation', value: insulationMohm === null ? 'not told' : `${figure(insulationMohm)} MΩ` },
    ...(note === null ? [] : [{ label: 'Note', value: note }]),
  ];
}
