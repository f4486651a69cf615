const channel = new BroadcastChannel('bedplate');

/** Tells the other tabs that what is kept on the phone has changed. */
export const tellOthers = () => channel.postMessage('changed');

export function whenOthersTell(work: () => void) {
  channel.addEventListener('message', work);
}
