import { useSyncExternalStore } from 'react';
import { viewAt } from './view-at';

const listeners = new Set<() => void>();
const tell = () => {
  for (const listener of listeners) listener();
};
const here = () => `${location.pathname}${location.search}`;

/** The address on the phone of what a link leads to. */
export const atPump = (path: string): string => (path.startsWith('/pump') ? path : `/pump${path === '/' ? '' : path}`);

/** Calls when another page is shown. Answers how to stop that. */
export function whenGone(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('popstate', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('popstate', listener);
  };
}

/** Shows another page of the phone. */
export function go(path: string, { replace }: { replace?: true } = {}) {
  const to = atPump(path);
  if (replace) history.replaceState(null, '', to);
  else history.pushState(null, '', to);
  window.scrollTo(0, 0);
  tell();
}

export function usePath(): { pathname: string; search: string } {
  const path = useSyncExternalStore(whenGone, here);
  const [pathname = '/', search = ''] = path.split('?');
  return { pathname, search };
}

/** Links to what the phone carries are followed here, all others by the browser. */
export function followLinks() {
  document.addEventListener('click', (event) => {
    if (
      event.defaultPrevented ||
      event.button !== 0 ||
      event.metaKey ||
      event.ctrlKey ||
      event.shiftKey ||
      event.altKey
    )
      return;
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    if (link === null || link.target !== '' || link.origin !== location.origin || link.hasAttribute('download')) return;
    if (link.hash !== '' && link.pathname === location.pathname) return;
    if (viewAt(link.pathname, link.search) === null) return;
    event.preventDefault();
    go(link.pathname + link.search);
  });
}
