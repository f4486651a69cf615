import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { byLabel } from '@/lib/register/queries/by-label';
import { findSets } from '@/lib/register/queries/find-sets';
import { nearestTags } from '@/lib/register/queries/nearest-tags';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { FindForm, LONGEST_FIND } from '../find-form';
import { labelledPath } from '../labelled-path';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { findPath, oneLine, setPath } from '../paths';
import { SetList } from '../set-list';
import { NearTags } from '../sets/near-tags';
import { personOf, whoMay } from '../who-is-here';

export const metadata: Metadata = { title: 'Find' };

export default answered(async function FindPage({ searchParams }: PageProps<'/find'>) {
  const asked = (await searchParams).q;
  const typed = oneLine(typeof asked === 'string' ? asked : '');
  const actor = await whoMay('register.read', findPath(typed.slice(0, LONGEST_FIND)));
  const isTooLong = typed.length > LONGEST_FIND;
  const found = typed === '' || isTooLong ? [] : await findSets(actor, typed);
  const exact = typed === '' || isTooLong ? null : await setByTag(actor, typed);
  const only = found.filter(({ how }) => how === 'tag');
  if (exact !== null) redirect(setPath(exact.row.tag));
  if (only.length === 1 && only[0] !== undefined) redirect(setPath(only[0].tag));
  const labelled = typed === '' || isTooLong ? null : await byLabel(actor, typed);
  if (labelled !== null) redirect(labelledPath(labelled));
  const { timezone } = await siteSettings(actor);
  const nearest = found.length === 0 && typed !== '' ? await nearestTags(actor, typed) : [];
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">Find</h1>
      <FindForm
        typed={typed.slice(0, LONGEST_FIND)}
        {...(isTooLong && { wrong: `That is too long to look for: type at most ${LONGEST_FIND} letters.` })}
      />
      {found.length > 0 && (
        <section>
          <SectionHead title="Found" aside={found.length === 1 ? '1 set' : `${found.length} sets, likeliest first`} />
          <SetList sets={found} timezone={timezone} />
        </section>
      )}
      {found.length === 0 && typed !== '' && !isTooLong && <NearTags typed={typed} nearest={nearest} />}
      {typed === '' && (
        <p className="mt-4">
          Type a tag as it stands at the pump, words of what it serves, or the code of a label. A slip of the finger in
          a tag is forgiven. All sets are in{' '}
          <Link className="to" href="/sets">
            the list of sets
          </Link>
          .
        </p>
      )}
    </Sheet>
  );
});
