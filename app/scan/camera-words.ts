/** Why there is no camera here, before it is asked for; null: there may be one. */
export function whyNoCamera(): string | null {
  if (!window.isSecureContext) return 'Browsers open the camera only on an address that begins with https.';
  if (navigator.mediaDevices?.getUserMedia === undefined) return 'This browser opens no camera.';
  return null;
}

/** Why the camera did not open (the names are those of the Media Capture and Streams standard, from memory). */
export function cameraProblem(error: unknown): string {
  switch (error instanceof Error ? error.name : '') {
    case 'NotAllowedError':
    case 'SecurityError':
      return 'The camera was refused. Allow it for this address in the browser’s settings, then try again.';
    case 'NotFoundError':
    case 'OverconstrainedError':
      return 'This device has no camera.';
    case 'NotReadableError':
    case 'AbortError':
      return 'Another program has the camera. Close it there, then try again.';
    default:
      return 'The camera did not open.';
  }
}
