import Link from 'next/link';
import type { SetsTakingPart } from '@/lib/register/sets-taking-part';
import type { HoldSource } from '@/lib/spares/hold/hold-options';

/** What stands in the way of a choice, or is to be known of it, before anything is chosen; what to do about it beside it. */
export function BeforeChoice({ toHold, from }: { toHold: SetsTakingPart; from: HoldSource }) {
  const { sets, taking, unknown, isOtherList, inUse } = toHold;
  return (
    <>
      {unknown.length > 0 && (
        <p className="pt-3">
          No set in use has the {unknown.length === 1 ? 'tag' : 'tags'} <bdi>{unknown.slice(0, 20).join(', ')}</bdi>
          {unknown.length > 20 && ` and ${unknown.length - 20} more`}.
        </p>
      )}
      {isOtherList && <p className="pt-3">The list of sets is another now: every set in it is ticked.</p>}
      {inUse === 0 ? (
        <p className="pt-3">
          No set is in use at this site: what to hold is told once there are some.{' '}
          <Link className="to" href="/sets">
            Sets
          </Link>
        </p>
      ) : sets.length === 0 ? (
        <p className="pt-3">
          No set is like this.{' '}
          <Link className="to" href="/hold">
            Ask for all {inUse}
          </Link>
        </p>
      ) : (
        taking.length === 0 && <p className="pt-3">No set is ticked: tick those for which motors are to be held.</p>
      )}
      {sets.length > 0 && <ShelfSays shelf={toHold.shelf} from={from} />}
    </>
  );
}

/** Said where the shelves have nothing to choose from, though they are asked. */
function ShelfSays({ shelf: { motors, refused }, from }: Pick<SetsTakingPart, 'shelf'> & { from: HoldSource }) {
  if (from === 'buy' || motors > refused) return null;
  const why =
    motors === 0
      ? 'No motor is on a shelf'
      : motors === 1
        ? 'The winding of the one motor on a shelf reads too low, so that it is not offered'
        : `The windings of all ${motors} motors on the shelves read too low, so that none is offered`;
  return (
    <p className="pt-3">
      {why}: {from === 'shelf' ? 'from the shelf alone nothing can be chosen.' : 'whatever is chosen is to be bought.'}
    </p>
  );
}
