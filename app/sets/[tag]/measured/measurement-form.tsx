import { AskForm } from '@/app/ask-form';
import type { AskField } from '@/app/ask-state';
import { clockText, today } from '@/app/moment';
import { MEASURED_FIELDS } from '@/lib/energy/read-measured';
import type { PumpSet } from '@/lib/plant/set';
import { tellMeasurementHere } from './tell-measurement-here';

/** What can be read at a running set; every figure may stay empty but one. */
export function MeasurementForm({ setId, set, timezone }: { setId: string; set: PumpSet; timezone: string }) {
  const isSingle = set.supply.phases === 1;
  const isOnDrive = set.supply.start === 'drive';
  const asked = MEASURED_FIELDS.filter(({ name }) => {
    if (name === 'hertz') return isOnDrive;
    return !isSingle || !OF_OTHER_LINES.includes(name);
  });
  const figures = asked.map(
    ({ name, label, unit }): AskField => ({
      kind: 'text',
      name,
      label: isSingle ? label.replace(/ L1(-L2)?$/, '') : label,
      autoComplete: 'off',
      ...(unit !== '' && { unit }),
      ...(name === 'powerFactor' && { hint: 'From 0.01 to 1.' }),
    }),
  );
  return (
    <AskForm
      id="measurement"
      action={tellMeasurementHere}
      button="Keep what was read"
      main
      fields={[
        { kind: 'hidden', name: 'key', value: crypto.randomUUID() },
        { kind: 'hidden', name: 'setId', value: setId },
        { kind: 'date', name: 'day', label: 'Day', value: today(timezone) },
        { kind: 'text', name: 'time', label: 'Time', value: clockText(new Date(), timezone), autoComplete: 'off' },
        ...figures,
        {
          kind: 'text',
          name: 'note',
          label: 'Note',
          hint: 'What the pump did: product, valves, pressure. May stay empty.',
          autoComplete: 'off',
        },
      ]}
    />
  );
}

const OF_OTHER_LINES: readonly string[] = ['voltsL2L3', 'voltsL3L1', 'ampsL2', 'ampsL3'];
