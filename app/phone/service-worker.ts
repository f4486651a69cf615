import { viewAt } from './view-at';

// Keeps the app on the phone, and nothing else: no signed-in page, no answer of the register. What it keeps is written in by
// scripts/phone.mjs.
declare const FILES: readonly string[];
declare const VERSION: string;

interface Lasting extends Event {
  waitUntil: (work: Promise<unknown>) => void;
}
interface Asked extends Event {
  request: Request;
  respondWith: (answer: Promise<Response>) => void;
}
interface Scope {
  addEventListener(kind: 'install' | 'activate', work: (event: Lasting) => void): void;
  addEventListener(kind: 'fetch', work: (event: Asked) => void): void;
  addEventListener(kind: 'message', work: (event: MessageEvent) => void): void;
  skipWaiting: () => Promise<void>;
  clients: { claim: () => Promise<void> };
}

const scope = self as unknown as Scope;
const SHELL = '/pump';
const OURS = 'bedplate-';
const NAME = OURS + VERSION;
/** So long a page may take before the phone's own is shown: a network that hangs is none. */
const PATIENCE_MS = 8_000;

scope.addEventListener('install', (event) =>
  event.waitUntil(
    caches.open(NAME).then(async (cache) => {
      // Without credentials: what is kept is nobody's.
      const shell = await fetch(SHELL, { credentials: 'omit', cache: 'no-store' });
      if (!shell.ok) throw new Error(`The shell answered ${shell.status}`);
      await Promise.all([cache.put(SHELL, shell), cache.addAll(FILES)]);
    }),
  ),
);

scope.addEventListener('activate', (event) =>
  event.waitUntil(
    caches
      .keys()
      .then((names) => names.filter((name) => name.startsWith(OURS) && name !== NAME))
      .then((old) => Promise.all(old.map((name) => caches.delete(name))))
      .then(() => scope.clients.claim()),
  ),
);

scope.addEventListener('message', ({ data }) => {
  if (data === 'take over') void scope.skipWaiting();
});

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin) return;
  if (FILES.includes(pathname)) event.respondWith(kept(pathname, request));
  else if (request.mode === 'navigate')
    event.respondWith(pathname === SHELL || pathname.startsWith(`${SHELL}/`) ? kept(SHELL, request) : page(request));
});

async function kept(name: string, request: Request): Promise<Response> {
  return (await caches.match(name, { cacheName: NAME })) ?? fetch(request);
}

/** The page itself; the phone's own app where there is no network to bring it, or it hangs and the phone has it too. */
async function page(request: Request): Promise<Response> {
  const { pathname, search } = new URL(request.url);
  const isCarried = viewAt(pathname, search) !== null;
  const late = new Promise<null>((resolve) => isCarried && setTimeout(resolve, PATIENCE_MS, null));
  const asked = fetch(request).catch(() => null);
  return (await Promise.race([asked, late])) ?? (await caches.match(SHELL, { cacheName: NAME })) ?? fetch(request);
}
