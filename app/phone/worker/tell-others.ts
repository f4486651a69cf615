import { tellPage } from './tell-page';

const channel = new BroadcastChannel('bedplate');

/** Tells the page and the other tabs that what is kept on the phone has changed. */
export function tellOthers() {
  tellPage();
  channel.postMessage('changed');
}

export function whenOthersTell(work: () => void) {
  channel.addEventListener('message', work);
}
