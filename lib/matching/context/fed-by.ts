import type { PumpSet } from '@/lib/plant/set';

/** What a motor in this set would be fed with; null where nobody has told. */
export interface FedBy {
  isDriveFed: boolean;
  phases: 1 | 3 | null;
  volts: number | null;
  /** On a drive its base frequency. */
  hertz: number | null;
  /** A person measured it: then it is compared with the plate, not as a nominal system. */
  isMeasured: boolean;
}

/**
 * On a drive the supply's phases, volts and hertz are its input: the motor sees three phases, the output volts at base
 * frequency. An output nobody stated is taken as the input, which a drive passes on and cannot exceed.
 */
export function fedBy(set: PumpSet): FedBy {
  const known = CACHE.get(set);
  if (known !== undefined) return known;
  const told = toldBy(set);
  CACHE.set(set, told);
  return told;
}

const CACHE = new WeakMap<PumpSet, FedBy>();

function toldBy({ supply }: PumpSet): FedBy {
  const { drive } = supply;
  if (supply.start !== 'drive')
    return {
      isDriveFed: false,
      phases: supply.phases,
      volts: supply.measuredVolts ?? supply.volts,
      hertz: supply.hertz,
      isMeasured: supply.measuredVolts !== null,
    };
  return {
    isDriveFed: true,
    phases: 3,
    volts: drive?.outputVolts ?? supply.volts,
    hertz: drive?.baseHertz ?? supply.hertz,
    isMeasured: false,
  };
}
