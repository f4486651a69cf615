import type { Predicted } from '@/lib/job/predicted';
import { defaultSettings } from '@/lib/matching/default-settings';

export const by = { settings: defaultSettings, asOf: '2026-11-25' };

/** What a 460 V motor of 6.6 A and 1.15 would be held against at 5.7 A; with what differs. Invented. */
export const predicted = (differs: Partial<Predicted> = {}): Predicted => ({
  phases: 3,
  amps: 5.7,
  whyNoAmps: null,
  plateA: 6.6,
  serviceFactor: 1.15,
  windingVolts: 460,
  motorRpm: 1755,
  overload: { settingA: 6.6, where: 'line', lineA: 6.6, phaseA: 3.828, isInDial: true },
  ...differs,
});
