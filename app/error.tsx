'use client';

import { Sheet } from './look/sheet';

/** An unexpected error: what is safe, what to do, a reference to read out, nothing else. */
export default function ErrorPage({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <Sheet>
      <h1 className="page">The register did not answer</h1>
      <p className="mt-2">
        What was saved before this stays saved. What you were just sending may not have arrived: look at the record
        before you send it again.
      </p>
      {error.digest !== undefined && (
        <dl className="kv mt-5 border-ink border-t-2">
          <div>
            <dt>Reference</dt>
            <dd>
              <b>{error.digest}</b>
            </dd>
          </div>
        </dl>
      )}
      <p className="label pt-2">Say the reference to whoever looks after the register.</p>
      <div className="actions">
        <button className="action" type="button" onClick={reset}>
          Try again
        </button>
        <a className="second" href="/">
          Register
        </a>
      </div>
    </Sheet>
  );
}
