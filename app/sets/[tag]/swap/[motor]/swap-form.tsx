'use client';

import { useActionState } from 'react';
import { SwapFields, type SwapFieldsProps } from './swap-fields';
import { SwapNotAsked } from './swap-not-asked';
import { emptyValues, type SwapState } from './swap-state';
import { SwapTaken } from './swap-taken';

interface SwapFormProps extends Omit<SwapFieldsProps, 'state'> {
  /** What becomes of the form when it is sent. */
  act: (before: SwapState, form: FormData) => Promise<SwapState>;
  requestKey: string;
  /** Why the motor can no longer be taken; it matters only before the form is sent. */
  gone: string | null;
}

/**
 * The form of a swap. A client component, since only so are the typed values kept on a refusal both with script and
 * without it.
 */
export function SwapForm({ act, requestKey, gone, ...props }: SwapFormProps) {
  const { tag, motor } = props;
  const [state, send] = useActionState<SwapState, FormData>(act, {
    outcome: 'asked',
    values: emptyValues(requestKey),
  });
  if (state.outcome === 'taken') return <SwapTaken tag={tag} motor={motor} state={state} />;
  if (state.outcome === 'asked' && gone !== null) return <SwapNotAsked tag={tag} gone={gone} />;
  return (
    <form action={send} className="grow" noValidate key={JSON.stringify(state)}>
      <SwapFields {...props} state={state} />
    </form>
  );
}
