import { useState } from 'react';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { momentText } from '@/app/moment';
import { setPath } from '@/app/paths';
import { ask, tellChanged } from '../ask';
import type { Status, Waiting } from '../asked';
import { timezoneOf } from '../timezone-of';
import { type Answer, useAsk } from '../use-ask';

/** What was recorded on this phone and the register does not have: what waits, and what somebody has to settle. */
export function WaitingScreen({ status }: { status: Answer<Status> }) {
  const answer = useAsk('outbox', {});
  const all = answer.state === 'here' ? answer.value : [];
  return (
    <>
      <h1 className="page">Recorded on this phone</h1>
      {answer.state === 'here' && all.length === 0 && (
        <p className="pt-3">Nothing waits: the register has all that was recorded here.</p>
      )}
      <ul className="history">
        {all.map((one) => (
          <WaitingLine key={one.key} one={one} timezone={timezoneOf(status)} />
        ))}
      </ul>
      <ActionBar>
        <Action href="/pump">At the pump</Action>
      </ActionBar>
    </>
  );
}

function WaitingLine({ one, timezone }: { one: Waiting; timezone: string }) {
  const [isSure, setSure] = useState(false);
  const act = (what: 'again' | 'drop') => void ask(what, { key: one.key }).then(tellChanged);
  return (
    <li>
      <p className="label">
        {momentText(new Date(one.at), timezone)}, by this phone’s clock,{' '}
        <a className="to" href={setPath(one.tag)}>
          <bdi>{one.tag}</bdi>
        </a>
      </p>
      <p>
        <bdi>{one.says}</bdi>
      </p>
      {one.state === 'waiting' ? (
        <p>Waits for the network. It goes up by itself, once.</p>
      ) : (
        <>
          <p role="alert">
            <b>
              <bdi>{one.told}</bdi>
            </b>{' '}
            Nothing of yours is lost: it stays here until it goes in or you take it away.
          </p>
          <div className="two pt-3">
            <button className="second" type="button" onClick={() => act('again')}>
              Send it again
            </button>
            <button className="second" type="button" onClick={() => (isSure ? act('drop') : setSure(true))}>
              {isSure ? 'Yes, take it away' : 'Take it away'}
            </button>
          </div>
        </>
      )}
    </li>
  );
}
