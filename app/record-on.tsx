import type { Units } from '@/lib/fields/field';
import { difference, type State } from '@/lib/fields/state';
import { toldChanges } from '@/lib/fields/told-changes';
import type { RecordOn } from '@/lib/register/queries/record-on';
import { ActionButton } from './look/action';
import { Facts } from './look/facts';
import { Field as Asked } from './look/field';
import { SectionHead } from './look/section-head';
import { momentText } from './moment';

/** A record as it stood at the end of a day, and what is otherwise now. */
export function RecordOnDay({
  thing,
  day,
  on,
  now,
  units,
  timezone,
  nameOf,
}: {
  thing: 'set' | 'motor';
  day: string;
  on: Exclude<RecordOn, { outcome: 'unknown' }>;
  now: State;
  units: Units;
  timezone: string;
  nameOf: (path: string, id: string) => string | null;
}) {
  return (
    <>
      <form className="filters">
        <Asked label="At the end of" name="day" type="date" defaultValue={day} />
        <ActionButton second>Show</ActionButton>
      </form>
      {on.outcome === 'not-yet' ? (
        <p className="pt-3">It was not in the register yet: it was entered {momentText(on.enteredAt, timezone)}.</p>
      ) : (
        <Stood {...{ thing, on, now, units, nameOf }} />
      )}
    </>
  );
}

function Stood({
  thing,
  on: { state, motorNumber },
  now,
  units,
  nameOf,
}: {
  thing: 'set' | 'motor';
  on: Extract<RecordOn, { outcome: 'stood' }>;
  now: State;
  units: Units;
  nameOf: (path: string, id: string) => string | null;
}) {
  const told = toldChanges(thing, {}, state, units, nameOf);
  const otherwise = difference(state, now);
  const since = otherwise === null ? [] : toldChanges(thing, otherwise.before, otherwise.after, units, nameOf);
  return (
    <>
      <SectionHead title="As it stood" aside={since.length === 0 ? 'as now' : undefined} />
      <Facts
        rows={[
          ...(motorNumber === null ? [] : [{ label: 'Motor in it', value: <bdi>{motorNumber}</bdi> }]),
          ...told.map(({ label, to }) => ({ label, value: <bdi>{to}</bdi> })),
        ]}
      />
      {since.length > 0 && (
        <>
          <SectionHead title="Otherwise now" aside={since.length} />
          <ul className="told pt-3">
            {since.map(({ label, from, to }) => (
              <li key={label}>
                {label}: <bdi>{from ?? 'not known'}</bdi> then, <bdi>{to ?? 'not known'}</bdi> now
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
