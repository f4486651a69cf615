import { useLayoutEffect, useState } from 'react';
import { answeredAhead } from './ahead';
import { ask, whenChanged } from './ask';
import type { AskName, Asks } from './asked';

export type Answer<T> = { state: 'asked' } | { state: 'here'; value: T } | { state: 'failed' };

/** What the worker answers, asked anew when what is kept on the phone changes. The last answer stands until then. */
export function useAsk<K extends AskName>(name: K, told: Asks[K]['in']): Answer<Asks[K]['out']> {
  const question = JSON.stringify(told);
  const [answer, setAnswer] = useState<{ question: string; answer: Answer<Asks[K]['out']> } | null>(null);
  // Asked at once: an effect would wait for the next frame.
  useLayoutEffect(() => {
    let isOver = false;
    let shown = aheadOf(name, question);
    const put = (one: Answer<Asks[K]['out']>) => {
      // What says the same as what was answered ahead is not drawn again.
      const isSame = shown !== null && JSON.stringify(shown) === JSON.stringify(one);
      shown = null;
      if (!isOver && !isSame) setAnswer({ question, answer: one });
    };
    if (shown !== null) setAnswer({ question, answer: shown });
    const askNow = () =>
      ask(name, JSON.parse(question) as Asks[K]['in']).then(
        (value) => put({ state: 'here', value }),
        () => put({ state: 'failed' }),
      );
    void askNow();
    const stop = whenChanged(askNow);
    return () => {
      isOver = true;
      stop();
    };
  }, [name, question]);
  if (answer?.question === question) return answer.answer;
  return aheadOf(name, question) ?? { state: 'asked' };
}

function aheadOf<K extends AskName>(name: K, question: string): Answer<Asks[K]['out']> | null {
  const value = answeredAhead(name, question);
  return value === undefined ? null : { state: 'here', value };
}
