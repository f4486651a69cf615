import type { ReviewRuleId, Urgency } from '@/lib/review/finding';
import type { Grouping, ReviewSort } from '@/lib/review/list/review-filter';
import { thousands } from '../thousands';

/** What each rule finds, in a word or three. */
export const REVIEW_WORDS: Record<ReviewRuleId, string> = {
  overloaded: 'Overloaded',
  'service-factor': 'Leans on its service factor',
  derated: 'Derated below its duty',
  oversized: 'Oversized',
  speed: 'Speed of the pump',
  'drive-torque': 'Torque on the drive',
  'train-torque': 'Torque of the train',
  start: 'Starting',
  supply: 'Supply',
  currents: 'Uneven currents',
  protection: 'Protection',
  'drive-duty': 'Duty on the drive',
  'single-phase': 'Single-phase',
  enclosure: 'Enclosure',
  classification: 'Classification',
  mount: 'Mounting',
  spare: 'No spare for a special motor',
};

export const URGENCY_WORDS: Record<Urgency, string> = {
  'at-once': 'At once',
  plan: 'To be planned',
  look: 'Look first',
  'next-time': 'At the next change of motor',
};

export const STATE_WORDS = { open: 'open', accepted: 'accepted', all: 'open and accepted' } as const;

export const SORT_WORDS: Record<ReviewSort, string> = {
  urgency: 'soonest first',
  money: 'dearest first',
  tag: 'by tag',
  load: 'most loaded first',
};

export const GROUP_WORDS: Record<Grouping, string> = { area: 'by area', rule: 'by what was found' };

/** "1 finding", "3 findings". */
export const findingsText = (count: number): string => (count === 1 ? '1 finding' : `${count} findings`);

/** "1,240 kWh". */
export const kwhText = (kwh: number): string => `${sum(kwh)} kWh`;

/** "1,240 EUR"; a site that has not told its currency has money without a name. */
export const moneyText = (money: number, currency: string | null): string =>
  `${sum(money)} ${currency ?? 'of the site’s money'}`;

/** Whole; small sums keep one figure behind the point. */
const sum = (value: number): string => thousands(value, Math.abs(value) < 10 ? 1 : 0);
