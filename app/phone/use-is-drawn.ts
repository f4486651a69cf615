import { useEffect, useState } from 'react';

/** True from the second frame on: what lies below the screen is drawn behind the first. */
export function useIsDrawn(): boolean {
  const [isDrawn, setDrawn] = useState(false);
  useEffect(() => {
    const soon = setTimeout(setDrawn, 0, true);
    return () => clearTimeout(soon);
  }, []);
  return isDrawn;
}
