import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { TitleBlock } from '@/app/look/title-block';
import { dayText } from '@/app/moment';
import { measuredPath, setPath, written } from '@/app/paths';
import { EstimateTable } from '@/app/review/estimate-table';
import { personOf, whoMay } from '@/app/who-is-here';
import { loadEstimates } from '@/lib/energy/load-estimates';
import { measuredOf } from '@/lib/energy/read-measured';
import { measurements } from '@/lib/register/queries/measurements';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../unknown-set';
import { MeasurementForm } from './measurement-form';
import { MeasurementList } from './measurement-list';

type Props = PageProps<'/sets/[tag]/measured'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `Measured, ${written((await params).tag)}`,
});

/** What was read at a running set, what load that tells, and the form to tell more. */
export default answered(async function MeasuredPage({ params, searchParams }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('set.measure', measuredPath(tag));
  const [known, { timezone, settings }] = await Promise.all([setByTag(actor, tag), siteSettings(actor)]);
  if (known === null) return unknownSet(actor, tag);
  const { row, set } = known;
  const list = await measurements(actor, row.id);
  const [newest] = list;
  const isOfMotor = newest !== undefined && newest.motorId === (row.motor?.id ?? null);
  return (
    <Sheet person={personOf(actor)} back={{ href: setPath(row.tag), words: row.tag }}>
      <TitleBlock
        small
        tag={row.tag}
        name="Measured while it runs"
        cells={[
          { label: 'Motor', value: set.failed === null ? 'no motor' : <bdi>{set.failed.id}</bdi> },
          { label: 'Area', value: <bdi>{row.area?.name ?? 'not told'}</bdi> },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      {(await searchParams).measured === 'kept' && (
        <p className="problem-list" role="status">
          Kept. The set review reckons with it.
        </p>
      )}
      {newest !== undefined && isOfMotor && set.failed !== null && (
        <section>
          <SectionHead title="Load by these readings" aside="a person weighs them" />
          <EstimateTable found={loadEstimates(set, set.failed, measuredOf(newest.figures), settings)} />
        </section>
      )}
      {row.retiredAt === null && (
        <section className="screen-only">
          <SectionHead title="Tell what was read" aside="a meter in a live panel is for competent people" />
          <MeasurementForm setId={row.id} set={set} timezone={timezone} />
        </section>
      )}
      <section>
        <SectionHead title="Read before" aside={list.length === 0 ? 'nothing' : list.length} />
        <MeasurementList list={list} timezone={timezone} />
      </section>
    </Sheet>
  );
});
