import { useEffect, useRef } from 'react';
import { drawWithin } from './draw-within';
import type { FindCode } from './find-code';
import type { Camera } from './use-camera';

/** From the end of one look to the next: about five a second, so that a phone stays cool. */
const PAUSE_MS = 200;
/** Enough for a label held a hand's width away. */
const LONGEST = 800;

/** Looks at what the camera sees, again and again while it is open. */
export function useFrames(
  { state, video }: Camera,
  reader: () => Promise<FindCode>,
  { onCodes, onNoReader }: { onCodes: (texts: string[]) => void; onNoReader: () => void },
): void {
  const heard = useRef({ onCodes, onNoReader });
  heard.current = { onCodes, onNoReader };
  const isOn = state.is === 'on';
  useEffect(() => {
    if (!isOn) return;
    let isOver = false;
    let next: ReturnType<typeof setTimeout>;
    const canvas = document.createElement('canvas');
    const look = async (find: FindCode) => {
      const seen = video.current;
      if (seen !== null && seen.videoWidth > 0) {
        drawWithin(canvas, seen, { width: seen.videoWidth, height: seen.videoHeight }, LONGEST);
        const texts = await find(canvas).catch(() => []); // a frame that cannot be read is followed by the next
        if (isOver) return;
        if (texts.length > 0) heard.current.onCodes(texts);
      }
      if (!isOver) next = setTimeout(() => look(find), PAUSE_MS);
    };
    reader().then(look, () => isOver || heard.current.onNoReader());
    return () => {
      isOver = true;
      clearTimeout(next);
    };
  }, [isOn, video, reader]);
}
