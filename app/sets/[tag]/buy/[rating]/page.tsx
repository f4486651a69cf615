import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { DemandGroups } from '@/app/buy/demand-groups';
import { groupQuestion } from '@/app/buy/group-asked';
import { SpecificationFiles } from '@/app/buy/specification-files';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { dayText, today } from '@/app/moment';
import { buyPath, candidatePath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { buyable } from '@/lib/matching/buy/buyable';
import { specification } from '@/lib/purchase/specification';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../../unknown-set';
import { unknownCandidate } from '../../unknown-candidate';

type Props = PageProps<'/sets/[tag]/buy/[rating]'>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { tag, rating } = await params;
  return { title: `Purchase specification, ${written(rating)} for ${written(tag)}` };
}

/** What a supplier must be told to offer the motor. What nobody knows is asked for, never made up. */
export default answered(async function BuyPage({ params }: Props) {
  const asked = await params;
  const [tag, rating] = [written(asked.tag), written(asked.rating)];
  const actor = await whoMay('set.assess', buyPath(tag, rating));
  must(actor, 'set.assess');
  const [known, { name, timezone }] = await Promise.all([setByTag(actor, tag), siteSettings(actor)]);
  if (known === null) return unknownSet(actor, tag);
  const { row, set } = known;
  const motor = buyable(set).find(({ id }) => id === rating);
  if (motor === undefined) return unknownCandidate(actor, row.tag, rating);
  const question = groupQuestion([row.tag], motor.id);
  return (
    <Sheet wide person={personOf(actor)} back={{ href: candidatePath(row.tag, motor.id), words: motor.id }}>
      <TitleBlock
        small
        tag={motor.id}
        name="Purchase specification"
        cells={[
          { label: 'Site', value: <bdi>{name}</bdi> },
          { label: 'For set', value: <Tag>{row.tag}</Tag> },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      <p className="pt-4">
        One motor, with its plate in these figures or better. What stands as “to be told” is not known at the site:
        agree it before the order.
      </p>
      <p className="below-table label screen-only">
        <Link className="to" href={`/buy${question}`}>
          For several sets
        </Link>
        <SpecificationFiles question={question} />
      </p>
      <DemandGroups groups={specification([{ set, own: motor }], motor, today(timezone))} />
    </Sheet>
  );
});
