import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { cameraProblem, whyNoCamera } from './camera-words';

export type CameraState =
  | { is: 'off' }
  | { is: 'opening' }
  | { is: 'on'; stream: MediaStream; light: boolean | null }
  | { is: 'not'; says: string };

export interface Camera {
  state: CameraState;
  video: RefObject<HTMLVideoElement | null>;
  open: () => void;
  close: () => void;
  /** Null in `state.light`: this camera has none. */
  setLight: (isOn: boolean) => void;
}

/** A torch is a constraint of Android's browsers that TypeScript's own types leave out. */
const torch = (isOn: boolean) => ({ advanced: [{ torch: isOn } as MediaTrackConstraintSet] });
const hasTorch = (track: MediaStreamTrack | undefined) =>
  Boolean((track?.getCapabilities?.() as { torch?: boolean } | undefined)?.torch);

/** The camera at the back, from a tap until it is closed, the page is hidden or left. */
export function useCamera(): Camera {
  const [state, setState] = useState<CameraState>({ is: 'off' });
  const video = useRef<HTMLVideoElement>(null);
  // What was asked for last: a camera that opens after it was closed is closed at once.
  const asked = useRef<{ stream: MediaStream | null } | null>(null);

  const close = useCallback(() => {
    for (const track of asked.current?.stream?.getTracks() ?? []) track.stop();
    asked.current = null;
    setState((before) => (before.is === 'not' ? before : { is: 'off' }));
  }, []);

  const open = useCallback(async () => {
    const says = whyNoCamera();
    if (says !== null) return setState({ is: 'not', says });
    const mine: { stream: MediaStream | null } = { stream: null };
    asked.current = mine;
    setState({ is: 'opening' });
    try {
      const stream = await navigator.mediaDevices.getUserMedia({
        video: { facingMode: { ideal: 'environment' }, width: { ideal: 1280 } },
      });
      if (asked.current !== mine) {
        for (const track of stream.getTracks()) track.stop();
        return;
      }
      mine.stream = stream;
      const [track] = stream.getVideoTracks();
      track?.addEventListener('ended', close);
      setState({ is: 'on', stream, light: hasTorch(track) ? false : null });
    } catch (error) {
      if (asked.current !== mine) return;
      asked.current = null;
      setState({ is: 'not', says: cameraProblem(error) });
    }
  }, [close]);

  const setLight = useCallback(async (isOn: boolean) => {
    const [track] = asked.current?.stream?.getVideoTracks() ?? [];
    try {
      await track?.applyConstraints(torch(isOn));
      setState((before) => (before.is === 'on' ? { ...before, light: isOn } : before));
    } catch {
      setState((before) => (before.is === 'on' ? { ...before, light: null } : before));
    }
  }, []);

  useEffect(() => {
    const onHidden = () => document.hidden && close();
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      document.removeEventListener('visibilitychange', onHidden);
      close();
    };
  }, [close]);

  useEffect(() => {
    if (video.current !== null && state.is === 'on' && video.current.srcObject !== state.stream)
      video.current.srcObject = state.stream;
  }, [state]);

  return { state, video, open, close, setLight };
}
