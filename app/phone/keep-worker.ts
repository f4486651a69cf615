type Listener = (activate: () => void) => void;
let offered: (() => void) | null = null;
let listener: Listener | null = null;

/** Keeps the app on the phone. Where the browser has no service worker (no https), it works as long as there is a network. */
export function keepWorker() {
  if (navigator.serviceWorker === undefined) return;
  void navigator.serviceWorker.register('/sw.js').then((registration) => {
    const look = () => {
      const { waiting } = registration;
      if (waiting === null || navigator.serviceWorker.controller === null) return;
      offered = () => waiting.postMessage('take over');
      listener?.(offered);
    };
    look();
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
  });
  let isReloading = false;
  const hadOne = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // None: it was taken away at a sign-out, and the page is on its way elsewhere.
    if (!hadOne || isReloading || navigator.serviceWorker.controller === null) return;
    isReloading = true;
    location.reload();
  });
}

/** Calls when a newer app waits for consent. */
export function whenNewer(work: Listener) {
  listener = work;
  if (offered !== null) work(offered);
  return () => {
    listener = null;
  };
}
