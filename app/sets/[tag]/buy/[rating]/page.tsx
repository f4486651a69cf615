import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { dayText } from '@/app/moment';
import { buyPath, candidatePath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { buyable } from '@/lib/matching/buy/buyable';
import { type DemandGroup, purchaseSpecification } from '@/lib/matching/buy/purchase-specification';
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
      <div className="spec">
        {purchaseSpecification(set, motor).map((group) => (
          <Demands key={group.title} group={group} />
        ))}
      </div>
    </Sheet>
  );
});

function Demands({ group: { title, demands } }: { group: DemandGroup }) {
  return (
    <section>
      <SectionHead title={title} />
      <dl className="kv">
        {demands.map(({ label, value, why }) => (
          <div key={label}>
            <dt>
              {label}
              {why !== null && <span className="label block">{why}</span>}
            </dt>
            <dd>{value === null ? <b>to be told</b> : <bdi>{value}</bdi>}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
