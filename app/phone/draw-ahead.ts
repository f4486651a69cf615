import { useSyncExternalStore } from 'react';
import { atPump } from './go';

/** What is likely to be touched next on a page: it is drawn before, unseen. */
let next: { from: string; to: string } | null = null;
const listeners = new Set<() => void>();

function put(one: typeof next) {
  next = one;
  for (const listener of listeners) listener();
}

/** Draws a page while another is shown. Paths as links have them, without a search. */
export const drawAhead = (from: string, to: string) => put({ from: atPump(from), to: atPump(to) });

/** Another page is shown. */
export const forgetAhead = () => {
  if (next !== null) put(null);
};

/** The path that is to be drawn besides the one that is shown; null: none. */
export function useAhead(shown: string): string | null {
  const ahead = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => next,
  );
  return ahead?.from === shown && ahead.to !== shown ? ahead.to : null;
}
