import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { OverloadSetting } from '../overload-setting';
import type { Quantity } from './quantity';

/** The overload's new setting in A, where it stands, and whether its dial reaches it. */
export function overload({ settingA, where, lineA, phaseA, isInDial }: OverloadSetting, set: PumpSet): Quantity {
  const about = { id: 'overload', name: 'Overload set to' } as const;
  if (lineA === null || phaseA === null)
    return { ...about, value: null, detail: 'Read the amps at this voltage on the plate' };
  if (settingA === null)
    return {
      ...about,
      value: null,
      detail: `${amps(lineA)} if it stands in the line, ${amps(phaseA)} in the delta: look in the starter which`,
    };
  const place = where === 'phase' ? 'in the delta, 0.58 of the plate' : 'in the line, by the plate';
  return { ...about, value: amps(settingA), detail: `${place}; ${dialWords(isInDial, set)}` };
}

function dialWords(isInDial: boolean | null, { supply: { overloadMinA, overloadMaxA } }: PumpSet): string {
  if (isInDial === null) return 'read both ends of its dial';
  const dial = [overloadMinA, overloadMaxA].filter((end) => end !== null).map((end) => figure(end));
  return `${isInDial ? 'inside' : 'outside'} its dial, ${dial.join(' to ')} A`;
}

const amps = (value: number) => `${figure(value)} A`;
