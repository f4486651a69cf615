import type { Actor } from '@/lib/auth/may';
import type { Candidate } from '@/lib/matching/offer/candidate';
import { type Ranked, ranked } from '@/lib/matching/offer/ranked';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { KnownSet } from '@/lib/register/queries/set-by-tag';
import { shelfMotors } from '@/lib/register/queries/shelf-motors';
import { spareSets } from '@/lib/register/queries/spare-sets';

/** Every motor that might go into the set, ranked: those that wait, then those of less critical sets. */
export async function rankedCandidates(
  actor: Actor,
  { row, set }: KnownSet,
  settings: SiteSettings,
  asOf: string,
): Promise<Ranked> {
  const [{ offered }, sparable] = await Promise.all([shelfMotors(actor), spareSets(actor, row.id)]);
  const ofSite: Candidate[] = [
    ...offered.map(
      ({ motor, whereabouts, condition, rewinds }): Candidate => ({
        from: 'shelf',
        motor,
        at: whereabouts,
        condition,
        rewinds,
      }),
    ),
    ...sparable.map(({ motor, stops }): Candidate => ({ from: 'set', motor, stops })),
  ];
  return ranked(set, ofSite, settings, asOf);
}
