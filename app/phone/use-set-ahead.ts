import { useEffect } from 'react';
import { setPath } from '@/app/paths';
import { askAhead } from './ahead';
import { drawAhead } from './draw-ahead';

/** So long it has stood first in a list when a set is asked for and drawn, before it is touched. */
const STOOD_MS = 150;

/** Undefined: no set is likely. */
export function useSetAhead(tag: string | undefined): void {
  useEffect(() => {
    if (tag === undefined) return;
    let isOther = false;
    const soon = setTimeout(async () => {
      await askAhead('set', { tag });
      if (!isOther) drawAhead(location.pathname, setPath(tag));
    }, STOOD_MS);
    return () => {
      isOther = true;
      clearTimeout(soon);
    };
  }, [tag]);
}
