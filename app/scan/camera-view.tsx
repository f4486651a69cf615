import type { Camera } from './use-camera';

/** The camera, from the tap that opens it; where there is none, why. */
export function CameraView({ camera: { state, video, open, close, setLight } }: { camera: Camera }) {
  if (state.is !== 'on')
    return (
      <section aria-label="Camera">
        {state.is === 'not' && (
          <p className="problem-list" role="alert">
            {state.says} Take a photo of the code, or type it.
          </p>
        )}
        <button type="button" className="action scan-open" disabled={state.is === 'opening'} onClick={open}>
          {state.is === 'opening'
            ? 'The camera opens'
            : state.is === 'not'
              ? 'Try the camera again'
              : 'Open the camera'}
        </button>
      </section>
    );
  return (
    <section aria-label="Camera">
      <video ref={video} className="scan-seen" autoPlay playsInline muted aria-label="What the camera sees" />
      <p className="mt-2">Hold the code of a label before it.</p>
      <div className="scan-camera">
        {state.light !== null && (
          <button type="button" className="second" onClick={() => setLight(!state.light)}>
            {state.light ? 'Light off' : 'Light on'}
          </button>
        )}
        <button type="button" className="second" onClick={close}>
          Close the camera
        </button>
      </div>
    </section>
  );
}
