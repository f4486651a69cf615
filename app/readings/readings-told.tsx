import { Facts } from '@/app/look/facts';
import { VALUE_NAMES } from '@/lib/job/reading-texts';
import type { Readings, ReadingValue } from '@/lib/job/readings';
import type { Step } from '@/lib/job/step';
import { figure } from '@/lib/units/figure';
import { stepName } from './step-name';

/** What was read and ticked; `steps` are those asked of this swap, so that a box left open is told too. Null: not asked. */
export function ReadingsTold({ readings, steps }: { readings: Readings; steps: readonly Step[] | null }) {
  const { ticked, rotation, amps } = readings;
  const open = steps === null ? [] : steps.filter(({ id, asks }) => asks.kind === 'box' && !ticked.includes(id));
  const read = amps.flatMap((one, i) => (one === null ? [] : [`L${i + 1} ${figure(one)}`]));
  return (
    <Facts
      rows={[
        ...VALUES.flatMap((name) => {
          const value = readings[name];
          return value === null ? [] : [{ label: VALUE_NAMES[name], value: `${figure(value, 3)} ${UNITS[name]}` }];
        }),
        ...(rotation === null
          ? []
          : [{ label: 'Rotation', value: rotation === 'right' ? 'the right way' : <b>the wrong way</b> }]),
        ...(read.length === 0 ? [] : [{ label: 'Running, A', value: read.join(', ') }]),
        ...(ticked.length === 0 ? [] : [{ label: 'Ticked', value: ticked.map(stepName).join(', ') }]),
        ...(open.length === 0 ? [] : [{ label: 'Not ticked', value: open.map(({ id }) => stepName(id)).join(', ') }]),
      ]}
    />
  );
}

const UNITS: Readonly<Record<ReadingValue, string>> = {
  insulationMohm: 'MΩ',
  overloadA: 'A',
  softFootMm: 'mm',
  offsetMm: 'mm',
  gapMmPer100: 'mm',
};
const VALUES = Object.keys(UNITS) as ReadingValue[];
