import type { FoundRow } from '@/lib/register/review/acceptances';
import { AskForm } from '../ask-form';
import { dayText, isoDay } from '../moment';
import { acceptFindingHere, withdrawFindingHere } from './ask-review';
import { REVIEW_WORDS } from './review-words';

/** What a person said of a finding, and the form that accepts it or takes that back. */
export function AcceptHere({
  row,
  timezone,
  back,
  mayAccept,
}: {
  row: FoundRow;
  timezone: string;
  /** Where the form leads back to. */
  back: string;
  mayAccept: boolean;
}) {
  const { note, isAccepted } = row;
  return (
    <>
      {note !== null && <Note row={row} note={note} timezone={timezone} />}
      {mayAccept &&
        (isAccepted && note !== null ? (
          <Withdraw row={row} note={note} back={back} />
        ) : (
          <Accept row={row} back={back} />
        ))}
    </>
  );
}

type Note = NonNullable<FoundRow['note']>;

function Note({ row, note, timezone }: { row: FoundRow; note: Note; timezone: string }) {
  const { by, at, reason, againOn } = note;
  return (
    <p className={row.isAccepted ? undefined : 'label'}>
      {row.isAccepted ? (
        <>
          <b>Accepted</b> until {isoDay(againOn)}
        </>
      ) : (
        `Was accepted until ${isoDay(againOn)} or for other figures`
      )}{' '}
      by <bdi>{by}</bdi> on {dayText(at, timezone)}: “<bdi>{reason}</bdi>”
    </p>
  );
}

const nameOf = ({ tag, finding }: FoundRow) => `${tag}, ${REVIEW_WORDS[finding.rule]}`;

function Withdraw({ row, note, back }: { row: FoundRow; note: Note; back: string }) {
  return (
    <div className="screen-only">
      <AskForm
        id={`withdraw-${note.acceptanceId}`}
        action={withdrawFindingHere}
        button={
          <>
            Withdraw<span className="vh"> the acceptance: {nameOf(row)}</span>
          </>
        }
        fields={[
          { kind: 'hidden', name: 'acceptance', value: note.acceptanceId },
          { kind: 'hidden', name: 'back', value: back },
        ]}
      />
    </div>
  );
}

function Accept({ row, back }: { row: FoundRow; back: string }) {
  const { setId, finding } = row;
  return (
    <div className="screen-only">
      <AskForm
        id={`accept-${finding.rule}-${setId}`}
        action={acceptFindingHere}
        button="Accept"
        folded={
          <>
            Accept it<span className="vh">: {nameOf(row)}</span>
          </>
        }
        fields={[
          { kind: 'hidden', name: 'setId', value: setId },
          { kind: 'hidden', name: 'rule', value: finding.rule },
          { kind: 'hidden', name: 'figures', value: finding.figures },
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
            label: 'Look at it again on',
            hint: 'Other figures raise it before.',
          },
        ]}
      />
    </div>
  );
}
