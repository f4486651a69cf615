'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

const EVERY_MS = 1_000;

/** Asks for the page anew while a job works on it. Without script the page does so by itself, and it may be left. */
export function KeepsUp() {
  const { refresh } = useRouter();
  useEffect(() => {
    const timer = setInterval(refresh, EVERY_MS);
    return () => clearInterval(timer);
  }, [refresh]);
  return (
    <noscript>
      <meta httpEquiv="refresh" content="3" />
    </noscript>
  );
}
