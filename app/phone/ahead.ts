import { ask, whenChanged } from './ask';
import type { AskName, Asks } from './asked';

/** What was asked before it is shown, so that it is drawn at once; until what is kept on the phone changes. */
const answers = new Map<string, unknown>();
let change = 0;
whenChanged(() => {
  change += 1;
  answers.clear();
});

/** Asks what will be asked next. Resolves when it is answered. */
export async function askAhead<K extends AskName>(name: K, told: Asks[K]['in']): Promise<void> {
  const asked = change;
  const value = await ask(name, told).catch(() => undefined);
  if (value === undefined || asked !== change) return;
  answers.delete(keyOf(name, JSON.stringify(told)));
  answers.set(keyOf(name, JSON.stringify(told)), value);
  // Of the sets that were looked at, the last few.
  for (const key of answers.keys()) if (answers.size > MOST) answers.delete(key);
}

const MOST = 4;

/** `question`: what is told, as JSON. Undefined: it was not asked ahead, or is not answered yet. */
export const answeredAhead = <K extends AskName>(name: K, question: string): Asks[K]['out'] | undefined =>
  answers.get(keyOf(name, question)) as Asks[K]['out'] | undefined;

const keyOf = (name: AskName, question: string) => `${name} ${question}`;
