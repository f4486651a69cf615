'use client';

import { useState } from 'react';
import { ActionButton } from '@/app/look/action';

/** Signs out. What was recorded at the pump in this browser and has not gone up would be wiped with it: that is said first. */
export function SignOutForm() {
  const [left, setLeft] = useState<number | null>(null);
  return (
    <form
      method="post"
      action="/sign-out"
      className="mt-6 grid"
      onSubmit={(event) => {
        if (left !== null) return;
        event.preventDefault();
        const form = event.currentTarget;
        void waiting().then((count) => {
          if (count === 0) form.submit();
          else setLeft(count);
        });
      }}
    >
      {left !== null && (
        <p role="alert" className="pb-3">
          {left === 1 ? '1 record' : `${left} records`} made at the pump in this browser would be lost.{' '}
          <a className="inline-act" href="/pump/waiting">
            See what waits
          </a>
        </p>
      )}
      <ActionButton second>{left === null ? 'Sign out' : 'Sign out and lose them'}</ActionButton>
    </form>
  );
}

/** How many records wait in this browser; none when it keeps nothing. */
function waiting(): Promise<number> {
  return new Promise((resolve) => {
    const none = () => resolve(0);
    const opening = indexedDB.open('bedplate');
    opening.onerror = none;
    // There is none: it must not come into being by being asked for.
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onsuccess = () => {
      const db = opening.result;
      if (!db.objectStoreNames.contains('outbox')) return none();
      const asking = db.transaction('outbox').objectStore('outbox').count();
      asking.onerror = none;
      asking.onsuccess = () => resolve(asking.result);
      db.close();
    };
  });
}
