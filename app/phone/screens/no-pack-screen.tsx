import { useEffect, useState } from 'react';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { ask, tellChanged } from '../ask';
import type { Status } from '../asked';

/** Nothing of a site lies on this phone yet. */
export function NoPackScreen({ status }: { status: Status }) {
  const [isAsked, setAsked] = useState(true);
  useEffect(() => {
    let isOver = false;
    void ask('bringUp', {}).then(() => {
      if (isOver) return;
      setAsked(false);
      tellChanged();
    });
    return () => {
      isOver = true;
    };
  }, []);
  return (
    <>
      <header className="bar">
        <a className="brand" href="/pump">
          Bedplate
        </a>
      </header>
      <main id="content" tabIndex={-1} className="sheet">
        <h1 className="page">At the pump</h1>
        <p className="pt-3" role="status">
          {wordsFor(status, isAsked)}
        </p>
        {status.ofOthers > 0 && (
          <p className="pt-3">
            {status.ofOthers === 1 ? '1 record waits' : `${status.ofOthers} records wait`} here for the person who made
            it to sign in.
          </p>
        )}
        {!isAsked && (
          <ActionBar>
            {status.isSignedOut ? (
              <Action href="/sign-in?to=/pump">Sign in</Action>
            ) : (
              <button className="action" type="button" onClick={() => location.reload()}>
                Try again
              </button>
            )}
          </ActionBar>
        )}
      </main>
    </>
  );
}

function wordsFor({ isSignedOut, problem }: Status, isAsked: boolean): string {
  if (isSignedOut) return 'Sign in once with a network. The site then lies on this phone and can be read without one.';
  if (isAsked) return 'Bringing the site onto this phone …';
  return (
    problem ??
    'Nothing of a site lies on this phone yet, and there is no network to bring it. Go where there is one, and open this page again.'
  );
}
