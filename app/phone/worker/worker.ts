import type { AskName } from '../asked';
import { answers, sendAndBringUp } from './answers';
import { isBriefEnough, load, loadBrief } from './held';
import { makeReady } from './offers';
import { whenOthersTell } from './tell-others';
import { tellPage } from './tell-page';
import { whenIdle } from './when-idle';

/** The phone's other half: it holds the snapshot, judges, and sends what waits, so that the page stays free. */
const scope = self as unknown as {
  onmessage: (event: MessageEvent<{ id: number; ask: AskName; told: never }>) => void;
  postMessage: (message: unknown) => void;
};
const briefed = loadBrief().catch((error) => console.warn('The phone’s database does not open.', error));
const opened = briefed.then(load).catch((error) => console.warn('The phone’s database does not open.', error));

/** What a list of sets tells, is told before the whole plant is in hand. */
const BRIEF: readonly AskName[] = ['status', 'home', 'find'];
async function readyFor(ask: AskName) {
  await briefed;
  if (!BRIEF.includes(ask) || !isBriefEnough()) await opened;
}

void opened.then(() => whenIdle(() => makeReady(null)));

scope.onmessage = async ({ data: { id, ask, told } }) => {
  const from = performance.now();
  await readyFor(ask);
  try {
    const answer = await answers[ask](told);
    // bench:phone counts the worker's time apart from the page's.
    scope.postMessage({ id, answer, ms: performance.now() - from });
  } catch (error) {
    scope.postMessage({ id, failed: String(error) });
  }
};

const changed = () => {
  tellPage();
  whenIdle(() => makeReady(null));
};
whenOthersTell(() => void load().then(changed));

/** Backs off while there is no network: from a quarter of a minute to five. */
const SHORTEST_MS = 15_000;
const LONGEST_MS = 300_000;
let pause = SHORTEST_MS;
async function goOn() {
  await opened;
  await sendAndBringUp().catch((error) => console.warn(error));
  changed();
  pause = Math.min(pause * 2, LONGEST_MS);
  setTimeout(goOn, pause);
}
void goOn();
self.addEventListener('online', () => {
  pause = SHORTEST_MS;
  void sendAndBringUp().then(changed);
});
