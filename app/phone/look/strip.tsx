import { useEffect, useState } from 'react';
import { ageText, clockText } from '../age-text';
import { ask, tellChanged } from '../ask';
import type { Status } from '../asked';
import type { Answer } from '../use-ask';

/** How old the snapshot is and how much waits, always. */
export function Strip({ status }: { status: Answer<Status> }) {
  const isOnline = useOnline();
  const [isAsked, setAsked] = useState(false);
  if (status.state !== 'here' || status.value.about === null)
    return (
      <p className="offline" role="status">
        <span>Reading what lies on this phone …</span>
      </p>
    );
  const { about, waiting, toSettle, isSignedOut, problem, now } = status.value;
  const age = `Snapshot ${clockText(about.at, about.site.timezone)}, ${ageText(about.at, now)} old`;
  const words = [
    isSignedOut ? 'Signed out.' : isOnline ? null : 'No network.',
    `${age}, ${waiting === 0 ? 'nothing waits' : waiting === 1 ? '1 record waits' : `${waiting} records wait`}.`,
    toSettle === 0 ? null : `${toSettle} to settle.`,
    problem,
  ].filter((part) => part !== null);
  const bringUp = () => {
    setAsked(true);
    void ask('bringUp', {}).then(() => {
      setAsked(false);
      tellChanged();
    });
  };
  return (
    <p className={toSettle > 0 ? 'offline urgent' : 'offline'} role="status">
      <span>{words.join(' ')}</span>
      {waiting + toSettle > 0 && <a href="/waiting">See it</a>}
      {isSignedOut && <a href="/sign-in?to=/pump">Sign in</a>}
      {!isSignedOut && waiting + toSettle === 0 && (
        <button type="button" onClick={bringUp} disabled={isAsked}>
          {isAsked ? 'Asking' : 'Renew'}
        </button>
      )}
    </p>
  );
}

function useOnline(): boolean {
  const [isOnline, setOnline] = useState(navigator.onLine);
  useEffect(() => {
    const look = () => setOnline(navigator.onLine);
    window.addEventListener('online', look);
    window.addEventListener('offline', look);
    return () => {
      window.removeEventListener('online', look);
      window.removeEventListener('offline', look);
    };
  }, []);
  return isOnline;
}
