import type { ReactNode } from 'react';

/** Dashed, as a hidden edge: what is shown is not what is there now. `link` is at most one way on. */
export function OfflineStrip({ words, link }: { words: string; link?: ReactNode }) {
  return (
    <p className="offline" role="status">
      <span>{words}</span>
      {link}
    </p>
  );
}
