import type { Actor } from '@/lib/auth/may';
import type { FormProblem, Typed } from '@/lib/fields/read-form';
import type { Edit, State } from '@/lib/fields/state';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { ELSEWHERE } from './motor-place-words';

/** What the two inputs show of a record. `tag` is of the set it is in. */
export const whereOf = ({ place, shelfId }: State, tag: string | null): Typed => ({
  where: place === 'on-shelf' ? `on-shelf ${String(shelfId)}` : place === undefined ? '' : String(place),
  inSet: tag ?? '',
});

/** The place that the two inputs tell. */
export async function whereTyped(actor: Actor, typed: Typed): Promise<{ edit: Edit; problems: FormProblem[] }> {
  const { where = '', inSet = '' } = typed;
  const no = (path: string, says: string) => ({ edit: {}, problems: [{ path, says }] });
  const [place, shelfId = null] = where.split(' ');
  if (place === 'on-shelf' && shelfId !== null) return { edit: { place, shelfId, setId: null }, problems: [] };
  if (place !== 'in-set') {
    if (!ELSEWHERE.some(({ value }) => value === place)) return no('where', 'Where it is: choose one of the places.');
    return { edit: { place: String(place), shelfId: null, setId: null }, problems: [] };
  }
  if (inSet === '') return no('inSet', 'The set it is in: write its tag.');
  const known = await setByTag(actor, inSet);
  if (known === null) return no('inSet', `The set it is in: “${inSet}” is not in the register of this site.`);
  return { edit: { place, shelfId: null, setId: known.row.id }, problems: [] };
}
