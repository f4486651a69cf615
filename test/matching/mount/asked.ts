import { contextOf } from '@/lib/matching/context';
import type { Criterion } from '@/lib/matching/criterion';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Finding } from '@/lib/matching/finding';
import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import { motor, set } from '../easy';

type SetParts = Parameters<typeof set>[0];

/** One question asked of the easy motor for the easy set, each with what differs. */
export const asked = (ask: Criterion, ofSet: SetParts = {}, ofMotor: Partial<MotorInput> = {}): Finding | null => {
  const pumpSet = set(ofSet);
  const candidate = motor(ofMotor);
  return ask(pumpSet, candidate, contextOf(pumpSet, candidate, { settings: defaultSettings, asOf: null }));
};

/** A failed motor with this frame, as little else as a plate may tell. */
export const failed = (frame: string | null, rest: Partial<MotorInput> = {}): NonNullable<PumpSetInput['failed']> => ({
  id: 'M-0',
  kind: 'cage',
  frame,
  poles: 4,
  phases: 3,
  ...rest,
});

/** A gear reducer with a NEMA 184TC input, the motor held by its face alone. Invented. */
export const onGear = (ofCoupling: PumpSetInput['coupling'] = {}, frame = '184TC'): NonNullable<SetParts> => ({
  mounting: 'face',
  failed: failed(frame, { mounting: 'face' }),
  coupling: { type: 'gear', ratio: 5, hub: null, ...ofCoupling },
});

/** What a test compares of a finding. */
export const gradeAndWork = (finding: Finding | null): [string | null, string | null] => [
  finding?.grade ?? null,
  finding?.work?.id ?? null,
];
