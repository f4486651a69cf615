import type { ReviewRuleId } from '../finding';
import type { ReviewCase } from '../review-case';
import type { ReviewRule } from '../rule';
import type { Proof } from './best-motor';
import { carryingTrain } from './carrying-train';
import type { Change } from './cure';
import { driveLimits } from './drive-limits';
import { evenVolts } from './even-volts';
import { largerSheave } from './larger-sheave';
import { otherStart } from './other-start';
import { rightSpeed } from './right-speed';
import { suitingDrive } from './suiting-drive';
import { suitingProtection } from './suiting-protection';

/** Changes at the set that may put it right, the least first; which of them do is proved afterwards. */
export type WorkWay = (asked: ReviewCase, rule: ReviewRule) => Change[];

/** How each finding can be put right: by work at the set, by another motor, or both. */
export interface Ways {
  byWork: readonly WorkWay[];
  /** Null: another motor is no answer. */
  byMotor: Proof | null;
}

export const WAYS: Readonly<Record<ReviewRuleId, Ways>> = {
  overloaded: { byWork: [], byMotor: { answered: ['power'] } },
  'service-factor': { byWork: [], byMotor: { answered: ['power'] } },
  derated: { byWork: [evenVolts], byMotor: { answered: ['power'] } },
  oversized: { byWork: [], byMotor: { answered: ['loading', 'power'] } },
  speed: { byWork: [rightSpeed], byMotor: { answered: ['speed'] } },
  'drive-torque': { byWork: [driveLimits], byMotor: { answered: ['torque'] } },
  'train-torque': { byWork: [carryingTrain], byMotor: { answered: ['torque'], ifAsked: ['power'] } },
  start: { byWork: [otherStart], byMotor: { answered: ['phases'], ifAsked: ['starting', 'breakaway'] } },
  supply: { byWork: [], byMotor: { answered: ['phases', 'frequency'], ifAsked: ['voltage'] } },
  currents: { byWork: [], byMotor: null },
  protection: { byWork: [suitingProtection], byMotor: { answered: ['full-load-current'] } },
  'drive-duty': { byWork: [suitingDrive], byMotor: { answered: ['drive-suitability'] } },
  'single-phase': { byWork: [], byMotor: { answered: ['phases'] } },
  enclosure: { byWork: [], byMotor: { answered: [], ifAsked: ['enclosure', 'washdown'] } },
  classification: {
    byWork: [],
    byMotor: { answered: ['area-classification'], mayBeChecked: ['area-classification'] },
  },
  mount: { byWork: [largerSheave], byMotor: { answered: ['mounting'], ifAsked: ['face', 'shaft-length', 'bearings'] } },
  spare: { byWork: [], byMotor: { answered: [] } },
};
