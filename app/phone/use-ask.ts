import { useLayoutEffect, useState } from 'react';
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
    const put = (one: Answer<Asks[K]['out']>) => {
      if (!isOver) setAnswer({ question, answer: one });
    };
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
  return answer?.question === question ? answer.answer : { state: 'asked' };
}
