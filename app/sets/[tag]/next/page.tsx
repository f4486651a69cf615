import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { dayText, today } from '@/app/moment';
import { candidatesPath, nextPath, setPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { CRITICALITIES } from '@/lib/plant/site-settings';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../unknown-set';
import { rankedCandidates } from '../candidates/ranked-candidates';
import { alternativesOf } from './alternatives';
import { AssumptionForm } from './assumption-form';
import { assumed } from './assumptions';
import { missingOf } from './missing';
import { MissingLines } from './missing-lines';
import { NextSums } from './next-sums';

type Props = PageProps<'/sets/[tag]/next'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `The next failure at ${written((await params).tag)}`,
});

/** What the set takes and how long it stands: tonight, at its next failure, after a repair. Figures, no verdict. */
export default answered(async function NextFailurePage({ params, searchParams }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('set.assess', nextPath(tag));
  const [known, { settings: ofSite, timezone }] = await Promise.all([setByTag(actor, tag), siteSettings(actor)]);
  if (known === null) return unknownSet(actor, tag);
  const { row, set } = known;
  const criticality = CRITICALITIES.find((one) => one === row.criticality) ?? null;
  const query = await searchParams;
  const told = assumed(query, ofSite, criticality);
  const ranked = await rankedCandidates(actor, known, told.settings, today(timezone));
  const missing = missingOf(set, row.tag, criticality, told.settings, told.assumptions, may(actor, 'set.edit'));
  return (
    <Sheet wide person={personOf(actor)} back={{ href: setPath(row.tag), words: row.tag }}>
      <TitleBlock
        small
        tag={row.tag}
        name="The next failure"
        cells={[
          { label: 'Motor', value: set.failed === null ? 'none in it' : <Tag>{set.failed.id}</Tag> },
          { label: 'Criticality', value: criticality === null ? 'not told' : `${criticality} of 4` },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      {set.failed === null ? (
        <NoMotor tag={row.tag} />
      ) : (
        <>
          <NextSums
            {...{ set, motor: set.failed, settings: told.settings }}
            alternatives={alternativesOf(ranked, told)}
            // A cost of an hour down that was typed holds whether or not anybody said how critical the set is.
            criticality={criticality ?? CRITICALITIES[0]}
          />
          <MissingLines missing={missing} />
          <AssumptionForm tag={row.tag} assumptions={told.assumptions} currency={ofSite.currency} />
          <Reckoned />
        </>
      )}
    </Sheet>
  );
});

/** How the figures follow from what they rest on. */
function Reckoned() {
  return (
    <>
      <SectionHead title="How it is reckoned" />
      <p className="pt-3">
        All hours at the greatest continuous duty: kWh a year = load at the motor’s shaft / its efficiency at that load
        × hours run; where a motor turns faster, the load is that of its own speed. Price, work and downtime fall now,
        the energy of each year at its end, at its price by then, brought to present value: the sum of ((1 + g) / (1 +
        r))^t over the years. Repairs to come, taxes and what is left at the end are not in it. A competent person
        decides.
      </p>
    </>
  );
}

function NoMotor({ tag }: { tag: string }) {
  return (
    <>
      <p className="pt-4">No motor stands here: there is nothing to set beside what could come.</p>
      <p className="screen-only">
        <Link className="to" href={candidatesPath(tag)}>
          What can go in
        </Link>
      </p>
    </>
  );
}
