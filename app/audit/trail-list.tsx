import Link from 'next/link';
import { momentText } from '@/app/moment';
import { motorPath, personPath, setPath } from '@/app/paths';
import type { Units } from '@/lib/fields/field';
import { toldChanges } from '@/lib/fields/told-changes';
import type { NamedThing } from '@/lib/register/names-of';
import type { Trail, TrailEntry } from '@/lib/register/queries/audit-trail';
import { undoHere } from '../changes/undo-here';
import { actionWords, THING_WORDS } from './action-words';
import { ToldList } from './told-list';

/** So many records of one change are told one by one; the rest are counted. */
const SHOWN_OF_A_CHANGE = 3;

/** The audit, the latest first; what was changed together stands together and is undone together. */
export function TrailList({
  trail,
  units,
  timezone,
  mayUndo,
  isWhole,
}: {
  trail: Trail;
  units: Units;
  timezone: string;
  mayUndo: boolean;
  /** Every record of a change is told. */
  isWhole: boolean;
}) {
  return (
    <ol className="history">
      {together(trail.entries).map((entries) => {
        const [first] = entries as [TrailEntry, ...TrailEntry[]];
        const shown = isWhole ? entries : entries.slice(0, SHOWN_OF_A_CHANGE);
        const { changeId } = first;
        return (
          <li key={first.entryId}>
            <p className="label">
              {momentText(first.at, timezone)},{' '}
              {first.by === null ? (
                'Bedplate'
              ) : (
                <Link className="to" href={`/audit?who=${encodeURIComponent(first.by.userId)}`}>
                  <bdi>{first.by.name}</bdi>
                </Link>
              )}
              {first.note !== null && (
                <>
                  {' – '}
                  <bdi>{first.note}</bdi>
                </>
              )}
            </p>
            {shown.map((entry) => (
              <div key={entry.entryId}>
                <p>
                  <Named thing={entry.thing} />: {actionWords(entry.action)}
                </p>
                <ToldList changes={toldChanges(entry.thing.thing, entry.before, entry.after, units, trail.nameOf)} />
              </div>
            ))}
            {entries.length > shown.length && changeId !== null && (
              <p>
                <Link className="to" href={`/audit?change=${changeId}`}>
                  and {entries.length - shown.length} more together with it
                </Link>
              </p>
            )}
            {changeId !== null && mayUndo && (
              <form action={undoHere} className="screen-only">
                <input type="hidden" name="change" value={changeId} />
                <button type="submit" className="inline-act">
                  {entries.length === 1 ? 'Undo this change' : 'Undo all of this change'}
                </button>
              </form>
            )}
          </li>
        );
      })}
    </ol>
  );
}

/** Neighbours of one change. */
function together(entries: readonly TrailEntry[]): TrailEntry[][] {
  const groups: TrailEntry[][] = [];
  for (const entry of entries) {
    const last = groups.at(-1);
    if (last !== undefined && entry.changeId !== null && last[0]?.changeId === entry.changeId) last.push(entry);
    else groups.push([entry]);
  }
  return groups;
}

function Named({ thing: { thing, id, name } }: { thing: NamedThing }) {
  const words = THING_WORDS[thing] ?? thing;
  if (name === null) return words;
  const href =
    thing === 'set'
      ? setPath(name)
      : thing === 'motor'
        ? motorPath(name)
        : thing === 'import'
          ? `/imports/${id}`
          : thing === 'person' && id !== null
            ? personPath(id)
            : null;
  return (
    <>
      {words}{' '}
      {href === null ? (
        <bdi>{name}</bdi>
      ) : (
        <Link className="to" href={href}>
          <bdi>{name}</bdi>
        </Link>
      )}
    </>
  );
}
