import { defaultSettings } from '@/lib/matching/default-settings';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Known, NOTHING_KNOWN } from '@/lib/review/known';
import { caseOf, type ReviewCase } from '@/lib/review/review-case';
import { motor, set } from '../matching/easy';

type SetParts = Parameters<typeof set>[0];
type MotorParts = Parameters<typeof motor>[0];

/** The easy set with the easy motor standing in it, each with what differs: the motor is its own evidence. */
export function inPlace(ofSet: SetParts = {}, ofMotor: MotorParts = {}, known: Known = NOTHING_KNOWN): ReviewCase {
  const standing: Motor = motor(ofMotor);
  const place: PumpSet = { ...set(ofSet), failed: standing };
  return caseOf(place, standing, { settings: defaultSettings, asOf: '2026-11-28' }, known);
}

/** The easy plate's one row with what differs. */
export const row = (differs: object): MotorParts => ({
  ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, pf: 0.82, efficiencyPct: 89.5, ...differs }],
});

/** The easy set on a drive whose figures differ. */
export const onDrive = (drive: object = {}, rest: NonNullable<SetParts> = {}): NonNullable<SetParts> => ({
  ...rest,
  supply: {
    start: 'drive',
    overloadMinA: null,
    overloadMaxA: null,
    drive: { ratedA: 8, overloadPct: 150, outputVolts: 460, baseHertz: 60, ...drive },
    ...rest.supply,
  },
});

/** A motor declared for a drive over ten to one. */
export const FOR_DRIVE = { driveDuty: 'inverter', constantTorqueRange: 10 } as const;
