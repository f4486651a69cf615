import type { Metadata } from 'next';
import { SET_FIELDS, SURROUNDINGS } from '@/lib/fields/set-fields';
import { areas } from '@/lib/register/queries/areas';
import { chosenIds } from '@/lib/register/queries/chosen-ids';
import { ownUnits } from '@/lib/register/queries/own-units';
import { previewChanges } from '@/lib/register/queries/preview-changes';
import { answered } from '../../answered';
import { questionWith, setsAsked } from '../../lists/asked-for';
import { bulkEdit, idsAsked } from '../../lists/bulk-asked';
import { BulkSheet } from '../../lists/bulk-sheet';
import { SelectField } from '../../look/field';
import { Sheet } from '../../look/sheet';
import { personOf, whoMay } from '../../who-is-here';

export const metadata: Metadata = { title: 'Change sets' };

const PATHS = [
  'criticality',
  'supply.name',
  'supply.phases',
  'supply.volts',
  'supply.hertz',
  'supply.measuredVolts',
  'supply.start',
];
const FIELDS = [...SURROUNDINGS, ...SET_FIELDS.filter(({ path }) => PATHS.includes(path))];

/** Changes surroundings, supply or area of many sets at once. */
export default answered(async function BulkSetsPage({ searchParams }: PageProps<'/sets/bulk'>) {
  const query = await searchParams;
  const actor = await whoMay('set.edit', '/sets');
  const [units, places, { ids, all }] = await Promise.all([
    ownUnits(actor),
    areas(actor),
    chosenIds(actor, { thing: 'set', filter: setsAsked(query), ids: idsAsked(query) }),
  ]);
  const { edit: told, problems } = bulkEdit(FIELDS, query, units);
  const area =
    typeof query.where === 'string' && places.some(({ areaId }) => areaId === query.where) ? query.where : null;
  const edit = { ...told, ...(area !== null && { areaId: area }) };
  const isTold = Object.keys(edit).length > 0 && problems.length === 0;
  const back = `/sets${questionWith('/sets', query, {})}`;
  return (
    <Sheet wide person={personOf(actor)} back={{ href: back, words: 'Sets' }}>
      <h1 className="page">Change sets together</h1>
      <BulkSheet
        thing="set"
        query={query}
        fields={FIELDS}
        units={units}
        more={
          <SelectField
            label="Area"
            name="where"
            empty="as it is"
            options={places.map(({ areaId, name }) => ({ value: areaId, words: name }))}
            defaultValue={area ?? ''}
          />
        }
        edit={edit}
        problems={problems}
        previews={isTold ? await previewChanges(actor, 'set', ids, edit) : null}
        chosen={ids.length}
        all={all}
        back={back}
        name={(_path, value) => `Area: ${places.find(({ areaId }) => areaId === value)?.name ?? 'another'}`}
      />
    </Sheet>
  );
});
