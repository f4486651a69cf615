import { readLabelCode } from '@/lib/plant/label-code';
import { isId } from '@/lib/register/is-id';
import { ALL_MOTORS } from '@/lib/register/motor-filter';
import type { LabelsAsked } from '@/lib/register/queries/label-lines';
import { ALL_SETS } from '@/lib/register/set-filter';
import { LIST_NAMES, motorsAsked, type Query, setsAsked } from '../lists/asked-for';
import { idsAsked } from '../lists/bulk-asked';
import { oneLine } from '../paths';

export interface WhoseLabels {
  /** Null: nothing is chosen yet. */
  asked: LabelsAsked | null;
  /** As the choice of the page has it; empty: chosen elsewhere, and kept by the form. */
  which: string;
  kept: readonly (readonly [name: string, value: string])[];
}

const NAMES = ['tag', 'number', 'code'] as const;
const LONGEST_LIST = 500;

/** Whose labels the address asks for: those chosen on the page, else named one by one, else those of a list. */
export function whoseLabels(query: Query): WhoseLabels {
  const which = typeof query.which === 'string' ? query.which : '';
  const chosen = ofWhich(which);
  if (chosen !== null) return { asked: chosen, which, kept: [] };
  const [tags, numbers, codes] = NAMES.map((name) => all(query, name));
  if (tags && numbers && codes && tags.length + numbers.length + codes.length > 0) {
    const read = codes.flatMap((text) => {
      const code = readLabelCode(text);
      return code.ok ? [code.value] : [];
    });
    return { asked: { by: 'name', tags, numbers, codes: read }, which: '', kept: keptOf(query, NAMES) };
  }
  const ids = idsAsked(query);
  switch (query.list) {
    case 'sets':
      return {
        asked: { by: 'sets', filter: setsAsked(query), ids },
        which: '',
        kept: keptOf(query, ['list', 'id', ...LIST_NAMES['/sets']]),
      };
    case 'motors':
      return {
        asked: { by: 'motors', filter: motorsAsked(query), storeId: null, ids },
        which: '',
        kept: keptOf(query, ['list', 'id', ...LIST_NAMES['/motors']]),
      };
    default:
      return { asked: null, which: '', kept: [] };
  }
}

function ofWhich(which: string): LabelsAsked | null {
  const [kind, id = ''] = which.split(' ');
  const ids = null;
  switch (kind) {
    case 'sets':
      return { by: 'sets', filter: ALL_SETS, ids };
    case 'motors':
      return { by: 'motors', filter: ALL_MOTORS, storeId: null, ids };
    case 'area':
      return isId(id) ? { by: 'sets', filter: { ...ALL_SETS, areaId: id }, ids } : null;
    case 'store':
      return isId(id) ? { by: 'motors', filter: ALL_MOTORS, storeId: id, ids } : null;
    default:
      return null;
  }
}

function all(query: Query, name: string): string[] {
  const told = query[name];
  const texts = told === undefined ? [] : Array.isArray(told) ? told : [told];
  return [...new Set(texts.map(oneLine))].filter((text) => text !== '').slice(0, LONGEST_LIST);
}

const keptOf = (query: Query, names: readonly string[]) =>
  names.flatMap((name) => all(query, name).map((value) => [name, value] as const));
