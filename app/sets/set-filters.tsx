import type { KnownArea } from '@/lib/register/queries/areas';
import type { SetFilter } from '@/lib/register/set-filter';
import { figure } from '@/lib/units/figure';
import { areaWords } from '../lists/area-words';
import { AreaField, CriticalityField } from '../lists/place-fields';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';

const CONDITIONS = [
  { value: 'failed', words: 'failed' },
  { value: 'empty', words: 'without a motor' },
  { value: 'retired', words: 'retired' },
];

/** What of the sets is shown: asked by the address, so that it can be kept and sent on. */
export function SetFilters({ filter, areas }: { filter: SetFilter; areas: readonly KnownArea[] }) {
  return (
    <form action="/sets" className="filters screen-only">
      <Field label="Words" name="q" type="search" defaultValue={filter.q} maxLength={100} autoComplete="off" />
      <AreaField areas={areas} areaId={filter.areaId} />
      <CriticalityField criticality={filter.criticality} />
      <SelectField
        label="State"
        name="condition"
        empty="Any"
        options={CONDITIONS}
        defaultValue={filter.condition ?? ''}
      />
      <Field
        label="Supply, V"
        name="volts"
        inputMode="decimal"
        defaultValue={filter.volts}
        maxLength={8}
        autoComplete="off"
      />
      <input type="hidden" name="sort" value={filter.sort} />
      {filter.isDown && <input type="hidden" name="down" value="1" />}
      <ActionButton second>Show</ActionButton>
    </form>
  );
}

/** What a list was asked for, in words, part by part. */
export const askedWords = (
  { q, areaId, criticality, condition, volts }: SetFilter,
  areas: readonly KnownArea[],
): (string | null)[] => [
  areaId === null ? null : areaWords(areaId, areas),
  criticality === null ? null : `criticality ${criticality} of 4`,
  CONDITIONS.find(({ value }) => value === condition)?.words ?? null,
  volts === null ? null : `supply of ${figure(volts)} V`,
  q === null ? null : `the words “${q}”`,
];
