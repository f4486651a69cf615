import type { MotorFilter } from '@/lib/register/motor-filter';
import type { ShelfPlace } from '@/lib/register/queries/shelves';
import { figure } from '@/lib/units/figure';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';

const PLACE_WORDS = [
  { value: 'in-set', words: 'in a set' },
  { value: 'on-shelf', words: 'on a shelf' },
  { value: 'at-repair', words: 'at repair' },
  { value: 'on-order', words: 'on order' },
  { value: 'scrapped', words: 'scrapped' },
];

/** What of the motors is shown: asked by the address, so that it can be kept and sent on. */
export function MotorFilters({ filter, shelves }: { filter: MotorFilter; shelves: readonly ShelfPlace[] }) {
  return (
    <form action="/motors" className="filters screen-only">
      <Field label="Words" name="q" type="search" defaultValue={filter.q} maxLength={100} autoComplete="off" />
      <SelectField
        label="Where"
        name="place"
        empty="Anywhere"
        options={PLACE_WORDS}
        defaultValue={filter.place ?? ''}
      />
      <SelectField
        label="Shelf"
        name="shelf"
        empty="Any"
        options={shelves.map(({ shelfId, store, shelf }) => ({ value: shelfId, words: `${store} / ${shelf}` }))}
        defaultValue={filter.shelfId ?? ''}
      />
      <Field
        label="Volts"
        name="volts"
        inputMode="decimal"
        defaultValue={filter.volts}
        maxLength={8}
        autoComplete="off"
      />
      <Field
        label="Poles"
        name="poles"
        inputMode="numeric"
        defaultValue={filter.poles}
        maxLength={4}
        autoComplete="off"
      />
      <SelectField
        label="Retired"
        name="retired"
        empty="In use"
        options={[{ value: '1', words: 'retired' }]}
        defaultValue={filter.isRetired ? '1' : ''}
      />
      <input type="hidden" name="sort" value={filter.sort} />
      {filter.isDown && <input type="hidden" name="down" value="1" />}
      <ActionButton second>Show</ActionButton>
    </form>
  );
}

/** What a list was asked for, in words, part by part; a shelf that is no more is told as such. */
export const askedWords = (
  { q, place, shelfId, volts, poles, isRetired }: MotorFilter,
  shelves: readonly ShelfPlace[],
): (string | null)[] => [
  PLACE_WORDS.find(({ value }) => value === place)?.words ?? null,
  shelfId === null ? null : `shelf ${shelfWords(shelfId, shelves)}`,
  volts === null ? null : `${figure(volts)} V`,
  poles === null ? null : `${figure(poles)} poles`,
  isRetired ? 'retired' : null,
  q === null ? null : `the words “${q}”`,
];

function shelfWords(shelfId: string, shelves: readonly ShelfPlace[]): string {
  const known = shelves.find((one) => one.shelfId === shelfId);
  return known === undefined ? 'that is not in use' : `${known.store} / ${known.shelf}`;
}
