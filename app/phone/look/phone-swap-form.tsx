import { useState } from 'react';
import { SwapFields, type SwapFieldsProps } from '@/app/sets/[tag]/swap/[motor]/swap-fields';
import { SwapNotAsked } from '@/app/sets/[tag]/swap/[motor]/swap-not-asked';
import { emptyValues, type SwapState } from '@/app/sets/[tag]/swap/[motor]/swap-state';
import { newKey } from '../new-key';

/** The form of a swap on the phone. What was typed stays, whatever comes of it. */
export function PhoneSwapForm({
  act,
  gone,
  ...props
}: Omit<SwapFieldsProps, 'state'> & { act: (form: FormData) => Promise<SwapState>; gone: string | null }) {
  const [state, setState] = useState<SwapState>(() => ({ outcome: 'asked', values: emptyValues(newKey()) }));
  if (state.outcome === 'asked' && gone !== null) return <SwapNotAsked tag={props.tag} gone={gone} />;
  return (
    <form
      className="grow"
      noValidate
      key={JSON.stringify(state)}
      onSubmit={(event) => {
        event.preventDefault();
        void act(new FormData(event.currentTarget)).then(setState);
      }}
    >
      <SwapFields {...props} state={state} />
    </form>
  );
}
