import type { Unoffered } from '@/lib/matching/offer/candidate';

export const UNOFFERED_WORDS: Record<Unoffered, string> = {
  'in-this-set': 'This motor stands in this set now.',
  'in-critical-set': 'This motor runs in another set that is not known to be less critical than this one.',
  'at-repair': 'This motor is at repair.',
  scrapped: 'This motor is scrapped.',
};
