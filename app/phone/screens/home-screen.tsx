import { useState } from 'react';
import { SectionHead } from '@/app/look/section-head';
import { momentText } from '@/app/moment';
import { setPath } from '@/app/paths';
import type { SetLine } from '@/lib/offline/contents';
import type { Status } from '../asked';
import { SignOut } from '../look/sign-out';
import { recentTags } from '../recent-tags';
import { type Answer, useAsk } from '../use-ask';
import { useSetAhead } from '../use-set-ahead';

/** Find a set: as typed, of those that are down, of those last opened here. */
export function HomeScreen({ status, typed: asked }: { status: Answer<Status>; typed: string }) {
  const [typed, setTyped] = useState(asked);
  return (
    <>
      <h1 className="page">At the pump</h1>
      <search>
        <form className="find-form" onSubmit={(event) => event.preventDefault()}>
          <div className="field">
            <label htmlFor="q">Find a set by tag, service or label code</label>
            <input
              className="in"
              id="q"
              type="search"
              value={typed}
              onChange={(event) => setTyped(event.currentTarget.value)}
              maxLength={100}
              autoComplete="off"
              autoCapitalize="characters"
              spellCheck={false}
            />
          </div>
          <a className="action" href="/scan">
            Scan
          </a>
        </form>
      </search>
      {typed.trim() === '' ? <Down status={status} /> : <Found typed={typed} />}
    </>
  );
}

function Found({ typed }: { typed: string }) {
  const answer = useAsk('find', { typed });
  const likeliest = answer.state === 'here' ? answer.value[0]?.tag : undefined;
  useSetAhead(likeliest);
  if (answer.state !== 'here') return null;
  if (answer.value.length === 0)
    return (
      <p className="pt-4" role="status">
        No set on this phone is like “<bdi>{typed}</bdi>”.
      </p>
    );
  return (
    <section>
      <SectionHead title={answer.value.length === 1 ? '1 set' : `${answer.value.length} sets`} />
      <ul className="lines">
        {answer.value.map((set) => (
          <FoundSet key={set.id} set={set} />
        ))}
      </ul>
    </section>
  );
}

function Down({ status }: { status: Answer<Status> }) {
  const home = useAsk('home', {});
  useSetAhead(home.state === 'here' ? home.value[0]?.tag : undefined);
  if (home.state !== 'here' || status.state !== 'here' || status.value.about === null) return null;
  const { timezone } = status.value.about.site;
  const down = home.value;
  const recent = recentTags();
  return (
    <>
      <section>
        <SectionHead title="Down" aside={down.length === 0 ? 'no fault is open' : String(down.length)} />
        <ul className="lines">
          {down.map((set) => (
            <FoundSet key={set.id} set={set} timezone={timezone} />
          ))}
        </ul>
      </section>
      {recent.length > 0 && (
        <section>
          <SectionHead title="Last opened here" />
          <ul className="lines">
            {recent.map((tag) => (
              <li key={tag}>
                <p className="line-name">
                  <a href={setPath(tag)}>
                    <bdi>{tag}</bdi>
                  </a>
                </p>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="pt-6 label">
        {status.value.sets} sets and {status.value.motors} motors lie on this phone.
      </p>
      <p className="pt-2">
        <a className="to" href="/">
          The whole register
        </a>{' '}
        <span className="label">(with a network)</span>
      </p>
      <SignOut status={status.value} />
    </>
  );
}

/** `timezone`: that its moment is told in, of one that is down. */
function FoundSet({ set, timezone }: { set: SetLine; timezone?: string }) {
  const { motor, frame, downSince } = set;
  const serves = [set.service, set.pump?.description, set.area].filter((part) => typeof part === 'string');
  return (
    <li className={downSince === null ? undefined : 'urgent'}>
      <p className="line-name">
        <a href={setPath(set.tag)}>
          <bdi>{set.tag}</bdi>
        </a>
      </p>
      <span className="line-aside">
        <bdi>{motor ?? 'no motor in it'}</bdi>
        {timezone === undefined && frame !== null && (
          <span className="dim">
            {' '}
            <bdi>{frame}</bdi>
          </span>
        )}
      </span>
      <p className="line-below">{serves.length === 0 ? 'What it serves is not told' : serves.join(', ')}</p>
      {downSince !== null && timezone !== undefined && (
        <p className="line-below">
          <b>Failed</b> {momentText(new Date(downSince), timezone)}
        </p>
      )}
    </li>
  );
}
