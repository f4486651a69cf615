import { readPlate } from '@/lib/nameplate/read-plate';
import { type Classification, classification as schema } from '@/lib/plant/classification';
import { classificationText } from './classification-text';
import { type Field, no } from './field';
import type { State } from './state';

const PARTS = ['scheme', 'zone', 'group', 'tempC', 'class', 'division', 'groups', 'tempCode'] as const;
/** How the record tells "unclassified, said by a person" (lib/register/things/state.ts). */
const UNCLASSIFIED = 'none';

/** A hazardous-area mark as it is written; at a place also "unclassified". */
export const classificationField = (path: string, label: string, { atPlace }: { atPlace: boolean }): Field => ({
  path,
  label,
  hint: atPlace
    ? 'As the area’s papers have it, or “unclassified”. Empty: not known.'
    : 'As stamped: “Ex tc IIIB T125 °C Dc”, “Class II Div 2 Group G T4”.',
  shown(state) {
    if (state[path] === UNCLASSIFIED) return 'unclassified';
    const mark = markIn(state, path);
    return mark === null ? '' : classificationText(mark);
  },
  read(text) {
    const none = Object.fromEntries(PARTS.map((part) => [`${path}.${part}`, null]));
    if (/^(unclassified|none|safe area)$/i.test(text.trim()))
      return atPlace
        ? { ok: true, edit: { ...none, [path]: UNCLASSIFIED } }
        : no('must be a mark, or empty when there is none');
    const { motor, problems } = readPlate(text);
    const mark = zoneIn(text) ?? motor.classification ?? null;
    if (mark === null || problems.length > 0)
      return no(
        problems[0]?.says ??
          'is not a mark that is understood: write zone or class and division, group and temperature',
      );
    const told = Object.entries(mark).filter(([, value]) => value !== null && value !== undefined);
    return {
      ok: true,
      edit: {
        ...none,
        ...(atPlace && { [path]: null }),
        ...Object.fromEntries(told.map(([part, value]) => [`${path}.${part}`, value])),
      },
    };
  },
});

function markIn(state: State, path: string): Classification | null {
  const told = PARTS.flatMap((part) =>
    state[`${path}.${part}`] === undefined ? [] : [[part, state[`${path}.${part}`]]],
  );
  const read = schema.safeParse(Object.fromEntries(told));
  return read.success ? read.data : null;
}

/** "zone 22, IIIB, 125 °C": a place as its papers have it (IEC 60079-10), which is no mark of a motor. */
function zoneIn(text: string): Classification | null {
  const parts = /^zone (\d{1,2})(?:,? (?:group )?(III?[ABC]))?(?:,? T? ?(\d{2,3}) ?°? ?C)?$/i.exec(text.trim());
  if (!parts) return null;
  const [, zone, group = null, tempC = null] = parts;
  const read = schema.safeParse({
    scheme: 'IEC',
    zone: Number(zone),
    group: group?.toUpperCase(),
    tempC: tempC && Number(tempC),
  });
  return read.success ? read.data : null;
}
