import type { ReactNode } from 'react';
import type { Answer } from '../use-ask';

/** Shows an answer; until it is there, room for it; what the phone does not have is said. */
export function Asked<T>({
  answer,
  nothing,
  children,
}: {
  answer: Answer<T | null>;
  nothing: ReactNode;
  children: (value: T) => ReactNode;
}) {
  switch (answer.state) {
    case 'asked':
      return <div className="min-h-screen" aria-busy="true" />;
    case 'failed':
      return (
        <p role="alert" className="pt-4">
          The phone could not work this out. What was recorded is safe. Load the page anew; if it stays so, look it up
          at a desk.
        </p>
      );
    case 'here':
      return answer.value === null ? nothing : children(answer.value);
  }
}
