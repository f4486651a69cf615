import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import type { Typed } from '@/lib/fields/read-form';
import type { Query } from '../lists/asked-for';
import { WHERE_INPUTS } from './motor-place-words';

const LONGEST = 2_000;

/** What an address fills in of a motor's form: from a tape, or from the walk of a motor without a plate. */
export function toldOf(query: Query): Typed {
  const names = [...MOTOR_FIELDS.map(({ path }) => path), ...WHERE_INPUTS];
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = query[name];
      return typeof value === 'string' && value.trim() !== '' ? [[name, value.slice(0, LONGEST)]] : [];
    }),
  );
}
