import Link from 'next/link';
import type { HoldFilter } from '@/lib/register/hold-asked';
import type { HoldAnswer } from '@/lib/register/queries/hold';
import type { SetsTakingPart } from '@/lib/register/sets-taking-part';
import { shownAs } from '@/lib/register/sets-taking-part';
import { ActionButton } from '../look/action';
import { DataTable } from '../look/data-table';
import { untorn } from '../look/untorn';
import { hoursText, VERDICT_WORDS } from '../look/words';
import { candidatesPath } from '../paths';
import { ratingText } from '../rating-text';
import { MOST_TICKED } from './hold-words';

/** The sets asked for with a box at each, which is ticked where the set takes part, and what is held for it. */
export function SetTicks({
  toHold,
  filter,
  answer,
  isOpen,
}: {
  toHold: SetsTakingPart;
  filter: HoldFilter;
  answer: HoldAnswer | null;
  isOpen: boolean;
}) {
  const { sets, taking } = toHold;
  if (sets.length === 0) return null;
  if (sets.length > MOST_TICKED)
    return (
      <p id="sets" className="pt-3">
        All {sets.length} sets take part. To tick some of them ask for at most {MOST_TICKED}, by words, area,
        criticality or tags.
      </p>
    );
  const isTaking = new Set(taking);
  const heldFor = heldForOf(answer);
  return (
    <details id="sets" open={isOpen}>
      <summary className="more">
        <span>
          Sets that take part: {taking.length} of {sets.length}
        </span>
      </summary>
      <input type="hidden" name="shown" value={shownAs(filter, sets)} />
      <p className="flex flex-wrap gap-2 py-3 print:hidden">
        <ActionButton second name="tick" value="all">
          Tick all
        </ActionButton>
        <ActionButton second name="tick" value="none">
          Tick none
        </ActionButton>
      </p>
      <DataTable name="Sets that take part">
        <thead>
          <tr>
            <th scope="col">
              <span className="vh">Takes part</span>
            </th>
            <th scope="col">Tag</th>
            <th scope="col">Serves</th>
            <th scope="col">Crit.</th>
            {answer !== null && <th scope="col">Held for it</th>}
          </tr>
        </thead>
        <tbody>
          {sets.map((of) => (
            <tr key={of.setId}>
              <td className="pick">
                <label>
                  <input type="checkbox" name="set" value={of.tag} defaultChecked={isTaking.has(of)} />
                  <span className="vh">{of.tag} takes part</span>
                </label>
              </td>
              <td className="id">
                <Link href={candidatesPath(of.tag)}>
                  <bdi>{of.tag}</bdi>
                </Link>
              </td>
              <td>
                <bdi>{[of.service, of.pump].filter((part) => part !== null).join(', ') || 'not told'}</bdi>
                {of.area !== null && (
                  <span className="label block">
                    <bdi>{of.area}</bdi>
                  </span>
                )}
              </td>
              <td className="num">{of.criticality ?? '–'}</td>
              {answer !== null && (
                <td>{isTaking.has(of) ? <HeldFor text={heldFor.get(of.setId) ?? null} /> : 'takes no part'}</td>
              )}
            </tr>
          ))}
        </tbody>
      </DataTable>
      <p className="flex flex-wrap gap-2 py-3 print:hidden">
        <ActionButton second name="choose" value="1">
          Choose for the ticked
        </ActionButton>
      </p>
    </details>
  );
}

/** Null: nothing is held for it. */
function HeldFor({ text }: { text: string | null }) {
  if (text !== null) return untorn(text);
  return (
    <a href="#uncovered" className="to">
      nothing, see why
    </a>
  );
}

/** For each set by its id the motor that goes best with it, and how it would go in. */
function heldForOf(answer: HoldAnswer | null): Map<string, string> {
  const told = new Map<string, string>();
  for (const { held, candidate, sets } of answer?.lines ?? [])
    sets.forEach((of, i) => {
      const as = held.sets[i]?.as;
      const how = as === undefined ? '' : `: ${VERDICT_WORDS[as.verdict].toLowerCase()}, ${hoursText(as.hours)}`;
      told.set(of.setId, `${ratingText(candidate.motor)}${how}`);
    });
  return told;
}
