import type { KnownArea } from '@/lib/register/queries/areas';
import { REVIEW_RULES, URGENCIES } from '@/lib/review/finding';
import { GROUPINGS, NO_AREA, REVIEW_SORTS, type ReviewFilter, STATES } from '@/lib/review/list/review-filter';
import { areaWords } from '../lists/area-words';
import { AreaField, CriticalityField } from '../lists/place-fields';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';
import { GROUP_WORDS, REVIEW_WORDS, SORT_WORDS, STATE_WORDS, URGENCY_WORDS } from './review-words';

/** Which findings are shown and how: asked by the address, so that it can be kept and sent on. */
export function ReviewFilters({ filter, areas }: { filter: ReviewFilter; areas: readonly KnownArea[] }) {
  return (
    <form action="/review" className="filters screen-only">
      <Field label="Words" name="q" type="search" defaultValue={filter.q} maxLength={100} autoComplete="off" />
      <SelectField
        label="Found"
        name="rule"
        empty="Anything"
        options={optionsOf(REVIEW_RULES, REVIEW_WORDS)}
        defaultValue={filter.rule ?? ''}
      />
      <AreaField areas={areas} areaId={filter.areaId} none={NO_AREA} />
      <CriticalityField criticality={filter.criticality} />
      <SelectField
        label="How soon"
        name="urgency"
        empty="Whenever"
        options={optionsOf(URGENCIES, URGENCY_WORDS)}
        defaultValue={filter.urgency ?? ''}
      />
      <SelectField label="State" name="state" options={optionsOf(STATES, STATE_WORDS)} defaultValue={filter.state} />
      <SelectField
        label="In order"
        name="sort"
        options={optionsOf(REVIEW_SORTS, SORT_WORDS)}
        defaultValue={filter.sort}
      />
      <SelectField
        label="Together"
        name="group"
        empty="in one list"
        options={optionsOf(GROUPINGS, GROUP_WORDS)}
        defaultValue={filter.group ?? ''}
      />
      <ActionButton second>Show</ActionButton>
    </form>
  );
}

/** What a list was asked for, in words, part by part. */
export const askedWords = (
  { q, rule, areaId, criticality, urgency, state }: ReviewFilter,
  areas: readonly KnownArea[],
): (string | null)[] => [
  rule === null ? null : REVIEW_WORDS[rule],
  areaId === null ? null : areaId === NO_AREA ? 'of no area' : areaWords(areaId, areas),
  criticality === null ? null : `criticality ${criticality} of 4`,
  urgency === null ? null : URGENCY_WORDS[urgency],
  STATE_WORDS[state],
  q === null ? null : `the words “${q}”`,
];

/** What of the address was understood. */
export const readOf = ({ rule, areaId, criticality, urgency, state, sort, group }: ReviewFilter) => ({
  ...{ rule, area: areaId, criticality, urgency, group },
  state: { value: state, words: `what is ${STATE_WORDS[state]}` },
  sort: { value: sort, words: SORT_WORDS[sort] },
});

const optionsOf = <T extends string>(values: readonly T[], words: Readonly<Record<T, string>>) =>
  values.map((value) => ({ value, words: words[value] }));
