import type { HoldAsked } from '@/lib/register/hold-asked';
import type { KnownArea } from '@/lib/register/queries/areas';
import { figure } from '@/lib/units/figure';
import { areaWords } from '../lists/area-words';
import { AIM_WORDS, CHECK_WORDS, FIT_WORDS, SOURCE_WORDS } from './hold-words';

/** For which sets a choice is asked, in words, part by part. Tags, where there are any, go before the rest. */
export function setsInWords({ sets: { q, areaId, criticality, tags } }: HoldAsked, areas: readonly KnownArea[]) {
  if (tags.length > 0) return [`the tags ${tags.join(', ')}`];
  return [
    areaId === null ? null : areaWords(areaId, areas),
    criticality === null ? null : `criticality ${criticality} of 4`,
    q === null ? null : `the words “${q}”`,
  ];
}

/** What may be held for them. What it costs and how many of each stand with what is assumed. */
export function mayBeHeld({ options }: HoldAsked): string {
  const { aim, from, fit, checks, mostHours, mostLeadDays, without } = options;
  const parts = [
    ...[AIM_WORDS[aim], `from ${SOURCE_WORDS[from]}`, FIT_WORDS[fit], CHECK_WORDS[checks]],
    `a swap of at most ${figure(mostHours)} h`,
    ...(mostLeadDays === null ? [] : [`delivered within ${figure(mostLeadDays)} days`]),
    ...(without.length === 0 ? [] : [`left out ${[...new Set(without)].join(', ')}`]),
  ];
  return `Asked for: ${parts.join('; ')}.`;
}
