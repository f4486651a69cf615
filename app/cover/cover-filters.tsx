import type { CoverFilter } from '@/lib/register/cover-filter';
import type { KnownArea } from '@/lib/register/queries/areas';
import { areaWords } from '../lists/area-words';
import { AreaField, CriticalityField } from '../lists/place-fields';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';

const STATES = [
  { value: 'none', words: 'nothing could go in' },
  { value: 'unsure', words: 'only what must be checked' },
  { value: 'one', words: 'a single motor could' },
];

/** Which sets the cover shows: asked by the address, so that it can be kept and sent on. */
export function CoverFilters({
  path,
  filter,
  areas,
}: {
  path: '/cover' | '/cover/matrix';
  filter: CoverFilter;
  areas: readonly KnownArea[];
}) {
  return (
    <form action={path} className="filters screen-only">
      <Field label="Words" name="q" type="search" defaultValue={filter.q} maxLength={100} autoComplete="off" />
      <AreaField areas={areas} areaId={filter.areaId} />
      <CriticalityField criticality={filter.criticality} />
      <SelectField label="Cover" name="state" empty="Any" options={STATES} defaultValue={filter.state ?? ''} />
      <input type="hidden" name="sort" value={filter.sort} />
      {filter.isDown && <input type="hidden" name="down" value="1" />}
      <ActionButton second>Show</ActionButton>
    </form>
  );
}

/** What a list was asked for, in words, part by part. */
export const askedWords = (
  { q, areaId, criticality, state }: CoverFilter,
  areas: readonly KnownArea[],
): (string | null)[] => [
  areaId === null ? null : areaWords(areaId, areas),
  criticality === null ? null : `criticality ${criticality} of 4`,
  STATES.find(({ value }) => value === state)?.words ?? null,
  q === null ? null : `the words “${q}”`,
];

/** What of the address was understood. */
export const readOf = ({ areaId, criticality, state, sort }: CoverFilter) => ({
  ...{ area: areaId, criticality, state },
  sort: { value: sort, words: 'by criticality' },
});
