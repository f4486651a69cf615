import Link from 'next/link';
import type { AcceptanceNote, OpenDoubt } from '@/lib/register/doubts/acceptances';
import type { FoundDoubt } from '@/lib/register/doubts/found-doubt';
import { AskForm } from '../ask-form';
import { Tag } from '../look/tag';
import { dayText, isoDay } from '../moment';
import { motorInputOf } from '../motors/motor-input-of';
import { motorEditPath, motorPath, setEditPath, setPath } from '../paths';
import { acceptDoubtHere } from './ask-doubts';
import { DOUBT_GRADES, RULE_WORDS } from './rule-words';

/** Doubts that stand: whose, what, the sum and its source, the way to the field, and the form that accepts it. */
export function DoubtLines({
  doubts,
  timezone,
  back,
  may,
}: {
  doubts: readonly OpenDoubt[];
  timezone: string;
  /** Where the form leads back to. */
  back: string;
  may: { edit: boolean; accept: boolean };
}) {
  return (
    <ol className="history doubts">
      {doubts.map((one) => (
        <li key={`${one.doubt.rule} ${one.thingId}`}>
          <DoubtHead one={one} isGraded />
          <p>
            <bdi>{one.doubt.says}</bdi>
          </p>
          <p className="label">{one.doubt.cite}</p>
          {one.before !== null && <Before note={one.before} timezone={timezone} />}
          {may.edit && (
            <p>
              {/* A whole page load: only then does the browser mark the field that the address names. */}
              <a className="to" href={fieldPath(one)}>
                Go to the field
              </a>
            </p>
          )}
          {may.accept && <Accept one={one} back={back} />}
        </li>
      ))}
    </ol>
  );
}

/** Whose doubt it is and what it is about. */
export function DoubtHead({ one, isGraded }: { one: FoundDoubt; isGraded?: true }) {
  const { thing, name, doubt } = one;
  return (
    <p>
      <Link className="to" href={thing === 'set' ? setPath(name) : motorPath(name)}>
        <Tag>{name}</Tag>
      </Link>{' '}
      <b>{RULE_WORDS[doubt.rule]}</b>
      {isGraded && <span className="label"> {DOUBT_GRADES[doubt.grade]}</span>}
    </p>
  );
}

function Before({ note, timezone }: { note: AcceptanceNote; timezone: string }) {
  const { by, at, reason, againOn } = note;
  return (
    <p className="label">
      Accepted on {dayText(at, timezone)} by <bdi>{by}</bdi>
      {againOn === null ? ' for other figures' : `, to be raised again on ${isoDay(againOn)} or with other figures`}: “
      <bdi>{reason}</bdi>”
    </p>
  );
}

function Accept({ one, back }: { one: OpenDoubt; back: string }) {
  const { thing, thingId, doubt } = one;
  return (
    <AskForm
      id={`accept-${doubt.rule}-${thingId}`}
      action={acceptDoubtHere}
      button="Accept"
      folded={
        <>
          Accept it<span className="vh">: {`${one.name}, ${RULE_WORDS[doubt.rule]}`}</span>
        </>
      }
      fields={[
        { kind: 'hidden', name: 'thing', value: thing },
        { kind: 'hidden', name: 'thingId', value: thingId },
        { kind: 'hidden', name: 'rule', value: doubt.rule },
        { kind: 'hidden', name: 'figures', value: doubt.figures },
        { kind: 'hidden', name: 'back', value: back },
        {
          kind: 'text',
          name: 'reason',
          label: 'Why it may stand',
          hint: 'Who looked, and at what.',
          autoComplete: 'off',
        },
        {
          kind: 'date',
          name: 'againOn',
          label: 'Raise it again on',
          hint: 'May stay empty: other figures raise it again.',
        },
      ]}
    />
  );
}

const fieldPath = ({ thing, name, doubt }: FoundDoubt): string =>
  thing === 'set' ? `${setEditPath(name)}#${doubt.field}` : `${motorEditPath(name)}#${motorInputOf(doubt.field)}`;
