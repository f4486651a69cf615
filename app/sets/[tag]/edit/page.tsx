import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { setEditPath, setPath, written } from '@/app/paths';
import { asked } from '@/app/record/record-state';
import { RetireForm } from '@/app/record/retire-form';
import { SetForm } from '@/app/sets/set-form';
import { unknownSet } from '@/app/sets/unknown-set';
import { personOf, whoMay } from '@/app/who-is-here';
import { shownIn } from '@/lib/fields/read-form';
import { SET_FIELDS } from '@/lib/fields/set-fields';
import { areas } from '@/lib/register/queries/areas';
import { ownUnits } from '@/lib/register/queries/own-units';
import { recordNow } from '@/lib/register/queries/record-now';
import { setByTag } from '@/lib/register/queries/set-by-tag';

type Props = PageProps<'/sets/[tag]/edit'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `Edit ${written((await params).tag)}`,
});

/** Changes what is known of a set. */
export default answered(async function EditSetPage({ params }: Props) {
  const tag = written((await params).tag);
  const actor = await whoMay('set.edit', setEditPath(tag));
  const known = await setByTag(actor, tag);
  const stands = known === null ? null : await recordNow(actor, 'set', known.row.id);
  if (known === null || stands === null) return unknownSet(actor, tag);
  const [units, places] = await Promise.all([ownUnits(actor), areas(actor)]);
  const typed = {
    ...shownIn(SET_FIELDS, stands.state, units, { hasRatings: false }),
    areaId: known.row.areaId ?? '',
  };
  return (
    <Sheet wide person={personOf(actor)} back={{ href: setPath(tag), words: tag }}>
      <h1 className="page">
        Edit <bdi>{known.row.tag}</bdi>
      </h1>
      <SetForm
        first={asked(typed, stands.version)}
        units={units}
        recordId={known.row.id}
        areas={places.map(({ areaId, name }) => ({ value: areaId, words: name }))}
      />
      <RetireForm thing="set" id={known.row.id} version={stands.version} path={setPath(tag)} />
    </Sheet>
  );
});
