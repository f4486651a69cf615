const channel = new BroadcastChannel('bedplate');
const page = self as unknown as { postMessage: (message: unknown) => void };

/** Tells the page and the other tabs that what is kept on the phone has changed. */
export function tellOthers() {
  page.postMessage({ changed: true });
  channel.postMessage('changed');
}

export function whenOthersTell(work: () => void) {
  channel.addEventListener('message', work);
}
