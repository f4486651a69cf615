import type { KnownSession } from '@/lib/register/queries/own-sessions';
import { AskForm } from './ask-form';
import { deviceWords } from './device-words';
import { momentText } from './moment';
import { endSessionHere } from './people/ask-people';

/** Where somebody is signed in, each session with the button that ends it; the one that looks has none. */
export function SessionLines({
  sessions,
  timezone,
  own,
}: {
  sessions: readonly KnownSession[];
  timezone: string;
  own: string | null;
}) {
  if (sessions.length === 0) return <p className="pt-3">Signed in nowhere.</p>;
  return (
    <ul className="lines">
      {sessions.map(({ id, userAgent, ipAddress, createdAt, lastSeenAt }) => (
        <li key={id}>
          <p className="line-name">{deviceWords(userAgent)}</p>
          <span className="line-aside">
            {id === own ? 'this one' : `last seen ${momentText(lastSeenAt, timezone)}`}
          </span>
          <p className="line-below">
            since {momentText(createdAt, timezone)}
            {ipAddress !== null && ipAddress !== '' && `, from ${ipAddress}`}
          </p>
          {id !== own && (
            <div className="line-below">
              <AskForm
                id={`session-${id}`}
                action={endSessionHere}
                fields={[{ kind: 'hidden', name: 'sessionId', value: id }]}
                button="End"
              />
            </div>
          )}
        </li>
      ))}
    </ul>
  );
}
