import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { OpenFaults } from '@/app/faults/open-faults';
import { Sheet } from '@/app/look/sheet';
import { TitleBlock } from '@/app/look/title-block';
import { dayText } from '@/app/moment';
import { failedPath, setPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../unknown-set';
import { FaultForm } from './fault-form';
import { SeenButtons } from './seen-buttons';

type Props = PageProps<'/sets/[tag]/failed'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `It has failed, ${written((await params).tag)}`,
});

export default answered(async function FailedPage({ params }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('fault.report', failedPath(tag));
  must(actor, 'fault.report');
  const [known, { timezone }] = await Promise.all([setByTag(actor, tag), siteSettings(actor)]);
  if (known === null) return unknownSet(actor, tag);
  const { row, set, faults } = known;
  return (
    <Sheet person={personOf(actor)} back={{ href: setPath(row.tag), words: row.tag }}>
      <TitleBlock
        small
        tag={row.tag}
        name="It has failed"
        cells={[
          { label: 'Motor', value: set.failed === null ? 'no motor' : <bdi>{set.failed.id}</bdi> },
          { label: 'Area', value: <bdi>{row.area?.name ?? 'not told'}</bdi> },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      {faults.length > 0 && (
        <>
          <OpenFaults faults={faults} timezone={timezone} />
          <p className="pt-3">One is open already. What you report now stands beside it.</p>
        </>
      )}
      <SeenButtons tag={row.tag} pageKey={crypto.randomUUID()} />
      <FaultForm tag={row.tag} pageKey={crypto.randomUUID()} />
    </Sheet>
  );
});
