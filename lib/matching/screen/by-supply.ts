import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { frequency } from '../criteria/supply/frequency';
import { phases } from '../criteria/supply/phases';
import { voltage } from '../criteria/supply/voltage';

/** Phases, voltage and frequency. A rating row rests on nothing else either. */
export const bySupply = {
  criteria: [phases, voltage, frequency],
  ofSet: ({ supply }: PumpSet): string => {
    const { phases, volts, hertz, measuredVolts, unbalancePct, start, drive } = supply;
    return [phases, volts, hertz, measuredVolts, unbalancePct, start, drive?.outputVolts, drive?.baseHertz].join('|');
  },
  ofMotor: ({ kind, phases, poles, maxRpm, ratings }: Motor): string => {
    // Only where the plate tells no poles, or has two speeds, does a row's speed tell them.
    const isBySpeed = poles === null || kind === 'two-speed';
    const rows = ratings.map(({ volts, voltsMin, voltsMax, hertz, connection, rpm }) =>
      [volts, voltsMin, voltsMax, hertz, connection, isBySpeed ? rpm : ''].join(' '),
    );
    return [kind, phases, poles, maxRpm, ...rows].join('|');
  },
};
