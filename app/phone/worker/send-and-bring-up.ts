import { bringUp } from './bring-up';
import { held, load } from './held';
import { send } from './outbox';

/** What waits goes first: the snapshot that comes after holds it. */
export async function sendAndBringUp() {
  if (held.about === null) await load();
  const hasPack = held.about !== null;
  if (hasPack) await send();
  await bringUp();
  // A new sign-in may find what its person left here.
  if (!hasPack && held.about !== null && (await send())) await bringUp();
}
