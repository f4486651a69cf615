import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { dayStart, today } from '@/app/moment';
import { setOnPath, setPath, written } from '@/app/paths';
import { RecordOnDay } from '@/app/record-on';
import { personOf, whoMay } from '@/app/who-is-here';
import { ownUnits } from '@/lib/register/queries/own-units';
import { recordThen } from '@/lib/register/queries/record-then';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../unknown-set';

type Props = PageProps<'/sets/[tag]/on'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `${written((await params).tag)} as it stood`,
});

/** The set as it stood on a day. */
export default answered(async function SetOnPage({ params, searchParams }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('register.read', setOnPath(tag));
  const known = await setByTag(actor, tag);
  if (known === null) return unknownSet(actor, tag);
  const [{ timezone }, units] = await Promise.all([siteSettings(actor), ownUnits(actor)]);
  const { day: asked } = await searchParams;
  const day = typeof asked === 'string' && dayStart(asked, timezone, 0) !== null ? asked : today(timezone);
  const then = await recordThen(actor, 'set', known.row.id, dayStart(day, timezone, 1) ?? new Date());
  return (
    <Sheet person={personOf(actor)} back={{ href: setPath(tag), words: known.row.tag }}>
      <h1 className="page">
        <bdi>{known.row.tag}</bdi> as it stood
      </h1>
      {then !== null && <RecordOnDay thing="set" day={day} units={units} timezone={timezone} {...then} />}
    </Sheet>
  );
});
