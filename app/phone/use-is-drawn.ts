import { useContext, useEffect, useState } from 'react';
import { whenGone } from './go';
import { LeafPath } from './leaf-path';

/** True from the second frame on in which the page is seen: what lies below the screen is drawn behind the first. */
export function useIsDrawn(): boolean {
  const path = useContext(LeafPath);
  const [isDrawn, setDrawn] = useState(false);
  useEffect(() => {
    let isOver = false;
    const look = () => {
      if (location.pathname !== path) return;
      requestAnimationFrame(() => setTimeout(() => !isOver && setDrawn(true)));
    };
    look();
    const stop = whenGone(look);
    return () => {
      isOver = true;
      stop();
    };
  }, [path]);
  return isDrawn;
}
