import type { AnchorHTMLAttributes } from 'react';

/** Stands in the phone's app where the pages have Next's link: the app follows its links itself. */
export default function Link({
  prefetch: _prefetch,
  replace: _replace,
  scroll: _scroll,
  ...rest
}: AnchorHTMLAttributes<HTMLAnchorElement> & { prefetch?: unknown; replace?: unknown; scroll?: unknown }) {
  return <a {...rest} />;
}
