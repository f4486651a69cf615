import type { AcceptedDoubt } from '@/lib/register/doubts/acceptances';
import { AskForm } from '../ask-form';
import { isoDay, momentText } from '../moment';
import { withdrawHere } from './ask-doubts';
import { DoubtHead } from './doubt-lines';

/** Doubts that a person let stand: who, when and why, and the button that takes it back. */
export function AcceptedLines({
  doubts,
  timezone,
  back,
  mayWithdraw,
}: {
  doubts: readonly AcceptedDoubt[];
  timezone: string;
  back: string;
  mayWithdraw: boolean;
}) {
  return (
    <ol className="history doubts">
      {doubts.map((one) => {
        const { acceptanceId, reason, by, at, againOn } = one.accepted;
        return (
          <li key={acceptanceId}>
            <DoubtHead one={one} />
            <p>
              “<bdi>{reason}</bdi>”
            </p>
            <p className="label">
              {momentText(at, timezone)}, <bdi>{by}</bdi>
              {againOn !== null && `; raised again on ${isoDay(againOn)}`}
            </p>
            <p>
              <bdi>{one.doubt.says}</bdi>
            </p>
            {mayWithdraw && (
              <AskForm
                id={`withdraw-${acceptanceId}`}
                action={withdrawHere}
                button={
                  <>
                    Withdraw<span className="vh"> the acceptance of {one.name}</span>
                  </>
                }
                fields={[
                  { kind: 'hidden', name: 'acceptance', value: acceptanceId },
                  { kind: 'hidden', name: 'back', value: back },
                ]}
              />
            )}
          </li>
        );
      })}
    </ol>
  );
}
