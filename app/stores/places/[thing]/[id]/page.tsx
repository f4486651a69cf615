import type { Metadata } from 'next';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { Empty } from '@/app/look/empty';
import { Sheet } from '@/app/look/sheet';
import { asked } from '@/app/record/record-state';
import { RetireForm } from '@/app/record/retire-form';
import { personOf, whoMay } from '@/app/who-is-here';
import { recordNow } from '@/lib/register/queries/record-now';
import { PlaceForm } from '../../place-form';

export const metadata: Metadata = { title: 'Store or shelf' };

/** Names a store or a shelf anew, or retires it. */
export default answered(async function PlacePage({ params }: PageProps<'/stores/places/[thing]/[id]'>) {
  const { thing, id } = await params;
  const actor = await whoMay('set.edit', `/stores/places/${thing}/${id}`);
  const kind = thing === 'store' || thing === 'shelf' ? thing : null;
  const stands = kind === null ? null : await recordNow(actor, kind, id);
  if (stands === null) answerStatus(404);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/stores/places', words: 'Stores and shelves' }}>
      {kind === null || stands === null ? (
        <Empty isWholePage title="No such place" says="It is not in the register of this site." />
      ) : (
        <>
          <h1 className="page">
            <bdi>{String(stands.state.name)}</bdi>
          </h1>
          <PlaceForm
            thing={kind}
            first={asked({ name: String(stands.state.name) }, stands.version)}
            recordId={id}
            storeId={null}
          />
          <RetireForm thing={kind} id={id} version={stands.version} path="/stores/places" />
        </>
      )}
    </Sheet>
  );
});
