/** Tells this worker's own page that what is kept on the phone has changed. */
export const tellPage = () =>
  (self as unknown as { postMessage: (message: unknown) => void }).postMessage({ changed: true });
