import type { MotorInput } from '@/lib/plant/motor';
import type { SetRule } from '@/lib/plausibility/rules';
import { motor, set } from '../matching/easy';

type SetParts = Parameters<typeof set>[0];

/** One question asked of the easy set with the easy motor in it, each with what differs. */
export const inSet = (ask: SetRule, ofSet: SetParts = {}, ofMotor: Partial<MotorInput> = {}) =>
  ask(set(ofSet), motor(ofMotor));

/** The easy plate's one row with what differs. */
export const row = (differs: NonNullable<MotorInput['ratings']>[number]): Partial<MotorInput> => ({
  ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, pf: 0.82, efficiencyPct: 89.5, ...differs }],
});

/** The easy set on a drive whose figures differ. */
export const onDrive = (drive: object = {}, rest: NonNullable<SetParts>['supply'] = {}): NonNullable<SetParts> => ({
  supply: {
    start: 'drive',
    overloadMinA: null,
    overloadMaxA: null,
    drive: { ratedA: 8, outputVolts: 460, baseHertz: 60, ...drive },
    ...rest,
  },
});
