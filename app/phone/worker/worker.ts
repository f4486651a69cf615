import type { AskName } from '../asked';
import { type BriefAsk, briefAnswers } from './brief-answers';
import { isBriefEnough, load, loadBrief } from './held';
import { sendAndBringUp } from './send-and-bring-up';
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

/** The engine comes when the page can be answered without it: what it takes of the line is not in the way of that. */
const engine = () => import('./engine');
const getReady = () =>
  engine().then(
    ({ makeReady }) => whenIdle(() => makeReady(null)),
    (error) => console.warn('The engine does not come.', error),
  );
void opened.then(getReady);

const isBrief = (name: AskName): name is BriefAsk => name in briefAnswers;

async function answer(name: AskName, told: never): Promise<unknown> {
  await briefed;
  if (!isBrief(name) || !isBriefEnough()) await opened;
  return isBrief(name) ? briefAnswers[name](told) : (await engine()).wholeAnswers[name](told);
}

scope.onmessage = async ({ data: { id, ask, told } }) => {
  const from = performance.now();
  try {
    const answered = await answer(ask, told);
    // bench:phone counts the worker's time apart from the page's.
    scope.postMessage({ id, answer: answered, ms: performance.now() - from });
  } catch (error) {
    scope.postMessage({ id, failed: String(error) });
  }
};

const changed = () => {
  tellPage();
  void getReady();
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
