import type { Metadata } from 'next';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { Empty } from '@/app/look/empty';
import { Sheet } from '@/app/look/sheet';
import { asked } from '@/app/record/record-state';
import { RetireForm } from '@/app/record/retire-form';
import { SavedNote } from '@/app/record/saved-note';
import { personOf, whoMay } from '@/app/who-is-here';
import { AREA_FIELDS } from '@/lib/fields/place-fields';
import { shownIn } from '@/lib/fields/read-form';
import { ownUnits } from '@/lib/register/queries/own-units';
import { recordNow } from '@/lib/register/queries/record-now';
import { AreaForm } from '../area-form';

export const metadata: Metadata = { title: 'Area' };

/** Changes an area and what surrounds its sets. */
export default answered(async function AreaPage({ params, searchParams }: PageProps<'/areas/[id]'>) {
  const { id } = await params;
  const actor = await whoMay('set.edit', `/areas/${id}`);
  const [units, stands] = await Promise.all([ownUnits(actor), recordNow(actor, 'area', id)]);
  if (stands === null) answerStatus(404);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/areas', words: 'Areas' }}>
      {stands === null ? (
        <Empty isWholePage title="No such area" says="It is not in the register of this site." />
      ) : (
        <>
          <h1 className="page">
            <bdi>{String(stands.state.name)}</bdi>
          </h1>
          <SavedNote query={await searchParams} />
          <AreaForm
            key={stands.version}
            first={asked(shownIn(AREA_FIELDS, stands.state, units, { hasRatings: false }), stands.version)}
            units={units}
            recordId={id}
          />
          <RetireForm thing="area" id={id} version={stands.version} path="/areas" />
        </>
      )}
    </Sheet>
  );
});
