import type { MotorInput } from '@/lib/plant/motor';
import { motor } from '../matching/easy';

type Row = NonNullable<MotorInput['ratings']>[number];

/** The easy motor with what differs in its one row, and in the rest of its plate. */
export const withRow = (row: Row, rest: Parameters<typeof motor>[0] = {}) =>
  motor({
    ...rest,
    ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, pf: 0.82, efficiencyPct: 89.5, ...row }],
  });

/** A motor of which only these rows and these facts are known. */
export const bare = (rest: Omit<MotorInput, 'id'>) =>
  motor({
    kind: null,
    frame: null,
    phases: null,
    poles: null,
    leads: null,
    serviceFactor: null,
    design: null,
    codeLetter: null,
    enclosure: null,
    driveDuty: null,
    duty: null,
    ...rest,
  });
