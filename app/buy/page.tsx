import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { PrintButton } from '@/app/labels/print-button';
import { ActionBar } from '@/app/look/action-bar';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { TitleBlock } from '@/app/look/title-block';
import { dayText, today } from '@/app/moment';
import { setPath } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import type { PumpSet } from '@/lib/plant/set';
import { groupPurchase, type PurchaseOption, specificationOf } from '@/lib/purchase/group/group-purchase';
import { groupOfSets, MOST_IN_GROUP } from '@/lib/register/queries/group-of-sets';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { ContradictionLines } from './contradiction-lines';
import { DemandGroups } from './demand-groups';
import { groupAsked, groupQuestion } from './group-asked';
import { GroupForm } from './group-form';
import { OptionsTable } from './options-table';
import { ServedTable } from './served-table';
import { SpecificationFiles } from './specification-files';

export const metadata: Metadata = { title: 'Purchase specification for several sets' };

/** One motor for several sets: what it must be, what it cannot be, and where it would serve. */
export default answered(async function BuyForSeveralPage({ searchParams }: PageProps<'/buy'>) {
  const asked = groupAsked(await searchParams);
  const actor = await whoMay('set.assess', `/buy${groupQuestion(asked.tags, asked.rating)}`);
  const [{ sets, unknown }, { name, settings, timezone }] = await Promise.all([
    groupOfSets(actor, asked),
    siteSettings(actor),
  ]);
  const asOf = today(timezone);
  const tags = sets.map(({ tag }) => tag);
  const { options, unanswered } = groupPurchase(sets, settings, asOf);
  const chosen = options.find(({ motor }) => motor.id === asked.rating) ?? options[0];
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/sets', words: 'Sets' }}>
      <TitleBlock
        small
        tag={chosen?.motor.id ?? 'One motor for several sets'}
        name="Purchase specification"
        cells={[
          { label: 'Site', value: <bdi>{name}</bdi> },
          { label: 'For', value: sets.length === 1 ? '1 set' : `${sets.length} sets` },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      <GroupForm tags={tags} />
      <Members tags={tags} rating={asked.rating} />
      <Warnings unknown={unknown} unanswered={unanswered} isFull={sets.length === MOST_IN_GROUP} />
      {chosen === undefined ? (
        <p className="pt-4">
          {sets.length === 0
            ? `Name two sets or more, or tick them in the list of sets: what one motor must be to stand in each is told here, up to ${MOST_IN_GROUP} at once.`
            : 'No standard rating answers any of these sets: poles and load, or the failed motor’s plate, must be told first.'}
        </p>
      ) : (
        <Chosen {...{ sets, options, chosen, tags, asOf }} />
      )}
    </Sheet>
  );
});

function Chosen({
  sets,
  options,
  chosen,
  tags,
  asOf,
}: {
  sets: readonly PumpSet[];
  options: readonly PurchaseOption[];
  chosen: PurchaseOption;
  tags: readonly string[];
  asOf: string;
}) {
  const question = groupQuestion(tags, chosen.motor.id);
  return (
    <>
      <div className="screen-only">
        <SectionHead title="Ratings that could be bought" aside="those that serve most sets first" />
        <OptionsTable options={options} chosen={chosen} tags={tags} />
      </div>
      <ContradictionLines contradictions={chosen.contradictions} />
      <SectionHead title="Sets that it would serve" aside="judged at each set as any candidate is" />
      <ServedTable served={chosen.served} />
      <p className="pt-4">
        One motor, with its plate in these figures or better. What stands as “to be told” is not known at the site:
        agree it before the order. Where the sets differ, each stands below the line with what it alone would ask.
      </p>
      <DemandGroups groups={specificationOf(sets, chosen, asOf)} />
      <p className="below-table label screen-only">
        <SpecificationFiles question={question} />
      </p>
      <ActionBar>
        <PrintButton />
      </ActionBar>
    </>
  );
}

function Members({ tags, rating }: { tags: readonly string[]; rating: string | null }) {
  if (tags.length === 0) return null;
  return (
    <ul className="lines screen-only">
      {tags.map((tag) => (
        <li key={tag}>
          <p className="line-name">
            <Link href={setPath(tag)}>
              <bdi>{tag}</bdi>
            </Link>
          </p>
          <span className="line-aside">
            <Link
              className="to"
              href={`/buy${groupQuestion(
                tags.filter((one) => one !== tag),
                rating,
              )}`}
            >
              Take out<span className="vh"> {tag}</span>
            </Link>
          </span>
        </li>
      ))}
    </ul>
  );
}

function Warnings({
  unknown,
  unanswered,
  isFull,
}: {
  unknown: readonly string[];
  unanswered: readonly string[];
  isFull: boolean;
}) {
  const says = [
    unknown.length === 0 ? null : `No set in use has the tag ${unknown.join(', ')}.`,
    unanswered.length === 0
      ? null
      : `No standard rating answers ${unanswered.join(', ')}: it is judged below and asks for nothing here.`,
    isFull ? `So many sets are asked for at once: ${MOST_IN_GROUP}. Those after them are left out.` : null,
  ].filter((text) => text !== null);
  return says.map((text) => (
    <p key={text} className="pt-3">
      <b>
        <bdi>{text}</bdi>
      </b>
    </p>
  ));
}
