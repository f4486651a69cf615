import { useState } from 'react';
import { ask } from '../ask';
import type { Status } from '../asked';

/** Signs out and leaves nothing on the phone. What waits would be lost with it, so that is said first. */
export function SignOut({ status: { about, waiting, toSettle } }: { status: Status }) {
  const [isAsked, setAsked] = useState(false);
  const [isAway, setAway] = useState(false);
  const left = waiting + toSettle;
  const signOut = async () => {
    if (left > 0 && !isAsked) return setAsked(true);
    const isThere = await fetch('/api/health', { cache: 'no-store' }).then(
      ({ ok }) => ok,
      () => false,
    );
    if (!isThere) return setAway(true);
    localStorage.clear();
    // The browser forgets it at the register's word; where it does not know that word, we do.
    await ask('wipe', {}).catch(() => null);
    leave();
  };
  return (
    <section className="pt-6">
      <p className="label">
        <bdi>{about?.person.name}</bdi>
      </p>
      {isAsked && (
        <p role="alert">
          {left === 1 ? '1 record has' : `${left} records have`} not gone up and would be lost. Stay signed in until
          nothing waits, or sign out all the same.
        </p>
      )}
      {isAway && <p role="alert">There is no network: the register could not be told. Nothing was wiped.</p>}
      <div className="mt-2 grid">
        <button className="second" type="button" onClick={() => void signOut()}>
          {isAsked ? 'Sign out and lose them' : 'Sign out, and wipe this phone'}
        </button>
      </div>
    </section>
  );
}

/** As a form of its own: what was shown went with what was wiped. */
function leave() {
  const form = document.createElement('form');
  form.method = 'post';
  form.action = '/sign-out';
  document.body.append(form);
  form.submit();
}
