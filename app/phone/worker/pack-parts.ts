import { PACK_VERSION, type Pack, type PackRefused } from '@/lib/offline/pack';
import { wipe } from './held';
import { state } from './standing';

/** Nothing came, or nothing that may be kept. `says`: what the person should know; null: there is just no network. */
export class Away extends Error {
  constructor(readonly says: string | null) {
    super('away');
  }
}

const PATIENCE_MS = 60_000;

/** An answer of the register, part by part: the next is asked for while one is still on its way. Throws Away. */
export async function* packParts(since: string | null): AsyncGenerator<Pack, void> {
  let asked = ask(since, null);
  for (;;) {
    const response = await asked;
    const told = /[?&]page=([^&>]+)>; rel="next"/.exec(response.headers.get('link') ?? '')?.[1];
    if (told !== undefined) {
      asked = ask(since, decodeURIComponent(told));
      asked.catch(() => undefined); // whoever goes on is told
    }
    const pack = await read(response);
    yield pack;
    if (pack.next === null) return;
    if (told === undefined) asked = ask(since, pack.next); // a proxy may have taken the header away
  }
}

async function ask(since: string | null, page: string | null): Promise<Response> {
  const query = new URLSearchParams({ ...(since !== null && { since }), ...(page !== null && { page }) });
  const signal = AbortSignal.timeout(PATIENCE_MS);
  return fetch(`/pump/pack?${query}`, { cache: 'no-store', signal }).catch(away);
}

async function read(response: Response): Promise<Pack> {
  state.isSignedOut = response.status === 401;
  if (response.status === 401) {
    const told = (await response.json().catch(() => null)) as PackRefused | null;
    if (told?.wipe === true) await wipe({ outboxToo: false });
    throw new Away(null);
  }
  if (!response.ok) throw new Away('The register does not answer as it should. The snapshot stays as it was.');
  const pack = (await response.json()) as Pack;
  if (pack.version !== PACK_VERSION)
    throw new Away('The register speaks a newer language than this app: reload when there is a network.');
  return pack;
}

const away = (): never => {
  throw new Away(null);
};
