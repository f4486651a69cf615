import type { Metadata } from 'next';
import { MOTOR_STATE } from '@/lib/fields/motor-fields';
import type { Edit } from '@/lib/fields/state';
import { chosenIds } from '@/lib/register/queries/chosen-ids';
import { ownUnits } from '@/lib/register/queries/own-units';
import { previewChanges } from '@/lib/register/queries/preview-changes';
import { shelves } from '@/lib/register/queries/shelves';
import { answered } from '../../answered';
import { motorsAsked, questionWith } from '../../lists/asked-for';
import { bulkEdit, idsAsked } from '../../lists/bulk-asked';
import { BulkSheet } from '../../lists/bulk-sheet';
import { SelectField } from '../../look/field';
import { Sheet } from '../../look/sheet';
import { personOf, whoMay } from '../../who-is-here';
import { ELSEWHERE } from '../motor-place-words';
import { shelfChoices } from '../shelf-choices';

export const metadata: Metadata = { title: 'Move motors' };

const PATHS = ['condition', 'spare.shelvedOn', 'spare.testedOn', 'spare.insulationMohm'];
const FIELDS = MOTOR_STATE.fields.filter(({ path }) => PATHS.includes(path));
/** Several motors go to one shelf, never into one set. */
const PLACES = ELSEWHERE.filter(({ value }) => value !== 'in-set');

/** Moves many motors at once, or notes the same of each. */
export default answered(async function BulkMotorsPage({ searchParams }: PageProps<'/motors/bulk'>) {
  const query = await searchParams;
  const actor = await whoMay('motor.edit', '/motors');
  const [units, places, { ids, all }] = await Promise.all([
    ownUnits(actor),
    shelves(actor),
    chosenIds(actor, { thing: 'motor', filter: motorsAsked(query), ids: idsAsked(query) }),
  ]);
  const { edit: told, problems } = bulkEdit(FIELDS, query, units);
  const choices = [...shelfChoices(places), ...PLACES];
  const where = choices.find(({ value }) => value === query.where)?.value ?? null;
  const edit = { ...told, ...(where !== null && moveTo(where)) };
  const isTold = Object.keys(edit).length > 0 && problems.length === 0;
  const back = `/motors${questionWith('/motors', query, {})}`;
  const shelfOf = (id: string) => places.find(({ shelfId }) => shelfId === id);
  return (
    <Sheet wide person={personOf(actor)} back={{ href: back, words: 'Motors' }}>
      <h1 className="page">Move motors together</h1>
      <BulkSheet
        thing="motor"
        query={query}
        fields={FIELDS}
        units={units}
        more={
          <SelectField label="Where to" name="where" empty="where it is" options={choices} defaultValue={where ?? ''} />
        }
        edit={edit}
        problems={problems}
        previews={isTold ? await previewChanges(actor, 'motor', ids, edit) : null}
        chosen={ids.length}
        all={all}
        back={back}
        name={(path, value) =>
          path === 'shelfId'
            ? `${shelfOf(value)?.store ?? 'another store'} / ${shelfOf(value)?.shelf ?? 'another shelf'}`
            : path === 'setId'
              ? 'in its set'
              : value
        }
      />
    </Sheet>
  );
});

function moveTo(where: string): Edit {
  const [place = '', shelfId = null] = where.split(' ');
  return { place, shelfId, setId: null };
}
