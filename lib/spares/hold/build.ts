import type { Motor } from '@/lib/plant/motor';

/** What is asked of a motor besides its rating that its price hangs on. */
export const SPECIAL_BUILDS = ['washdown', 'area', 'brake'] as const;
export type SpecialBuild = (typeof SPECIAL_BUILDS)[number];

/** How it is built, in the order of `SPECIAL_BUILDS`; empty: plain. */
export function buildsOf({ washdown, classification, brake, has }: Motor): SpecialBuild[] {
  const builds: SpecialBuild[] = [];
  if (washdown !== null && washdown !== 'none') builds.push('washdown');
  if (classification !== null) builds.push('area');
  if (has?.includes('brake') || brake.torqueNm !== null || brake.volts !== null) builds.push('brake');
  return builds;
}
