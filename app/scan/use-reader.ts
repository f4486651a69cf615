import { useCallback, useRef } from 'react';
import type { FindCode } from './find-code';
import { findCodeHere } from './find-code-here';

/** The reader of codes, made when it is first needed and then kept; one that could not be fetched is tried anew. */
export function useReader(readerPath: string): () => Promise<FindCode> {
  const made = useRef<Promise<FindCode> | null>(null);
  return useCallback(() => {
    if (made.current === null) {
      const reader = findCodeHere(readerPath);
      made.current = reader;
      reader.catch(() => {
        made.current = null;
      });
    }
    return made.current;
  }, [readerPath]);
}
