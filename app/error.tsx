'use client';

import { Failure } from './failure';

/** What failed in the browser, or outside a page. Pages answer for themselves: see answered.tsx. */
export default function ErrorPage({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return <Failure isDatabaseGone={false} reference={error.digest ?? null} retry={reset} />;
}
