import { readPlate } from '@/lib/nameplate/read-plate';
import { type Field, no } from './field';

type Stamped = 'design' | 'codeLetter' | 'insulation' | 'duty' | 'enclosure' | 'ip';

/** A mark as it is stamped: "CONT" is S1, "CL F" is F, "55" behind IP is IP55. `mark` is the label it has on a plate. */
export const stampedField = (path: Stamped, label: string, mark: string, rest: Pick<Field, 'hint'> = {}): Field => ({
  ...rest,
  path,
  label,
  shown: (state) => (state[path] === undefined ? '' : String(state[path])),
  read: (text) => {
    if (text.length > 40) return no('is longer than any such mark');
    const { motor, problems } = readPlate(`${mark} ${text.replace(new RegExp(`^${mark}\\b`, 'i'), '')}`);
    const value = motor[path];
    if (typeof value === 'string' && problems.length === 0) return { ok: true, edit: { [path]: value } };
    return no(problems[0]?.says ?? 'is not understood here');
  },
});
