import type { AskName } from '../asked';
import { answers, sendAndBringUp } from './answers';
import { load } from './held';
import { whenOthersTell } from './tell-others';
import { tellPage } from './tell-page';

/** The phone's other half: it holds the snapshot, judges, and sends what waits, so that the page stays free. */
const scope = self as unknown as {
  onmessage: (event: MessageEvent<{ id: number; ask: AskName; told: never }>) => void;
  postMessage: (message: unknown) => void;
};
const opened = load().catch((error) => console.warn('The phone’s database does not open.', error));

scope.onmessage = async ({ data: { id, ask, told } }) => {
  await opened;
  try {
    scope.postMessage({ id, answer: await answers[ask](told) });
  } catch (error) {
    scope.postMessage({ id, failed: String(error) });
  }
};

whenOthersTell(() => void load().then(tellPage));

/** Backs off while there is no network: from a quarter of a minute to five. */
const SHORTEST_MS = 15_000;
const LONGEST_MS = 300_000;
let pause = SHORTEST_MS;
async function goOn() {
  await opened;
  await sendAndBringUp().catch((error) => console.warn(error));
  tellPage();
  pause = Math.min(pause * 2, LONGEST_MS);
  setTimeout(goOn, pause);
}
void goOn();
self.addEventListener('online', () => {
  pause = SHORTEST_MS;
  void sendAndBringUp().then(tellPage);
});
