import { useEffect, useState } from 'react';
import { valuesOf } from '@/app/sets/[tag]/swap/[motor]/read-swap-form';
import { SwapFields, type SwapFieldsProps } from '@/app/sets/[tag]/swap/[motor]/swap-fields';
import { SwapNotAsked } from '@/app/sets/[tag]/swap/[motor]/swap-not-asked';
import { emptyValues, type SwapState, type SwapValues } from '@/app/sets/[tag]/swap/[motor]/swap-state';
import { ask } from '../ask';
import { newKey } from '../new-key';

/**
 * The form of a swap on the phone. A job takes hours, and a phone in a pocket forgets its pages: what was typed and ticked is
 * kept as it is typed, until the swap is recorded.
 */
export function PhoneSwapForm({
  act,
  gone,
  ...props
}: Omit<SwapFieldsProps, 'state'> & { act: (form: FormData) => Promise<SwapState>; gone: string | null }) {
  const name = `swap ${props.tag} ${props.motor}`;
  const [state, setState] = useState<SwapState | null>(null);
  useEffect(() => {
    const fresh = () => emptyValues(newKey());
    const start = (draft: unknown) =>
      setState({ outcome: 'asked', values: draft === null ? fresh() : { ...fresh(), ...(draft as SwapValues) } });
    void ask('draft', { name }).then(start, () => start(null));
  }, [name]);
  if (state === null) return null;
  if (state.outcome === 'asked' && gone !== null) return <SwapNotAsked tag={props.tag} gone={gone} />;
  const keepDraft = (value: SwapValues | null) => void ask('keepDraft', { name, value }).catch(() => {});
  return (
    <form
      className="grow"
      noValidate
      key={JSON.stringify(state)}
      onInput={(event) => keepDraft(valuesOf(new FormData(event.currentTarget)))}
      onSubmit={(event) => {
        event.preventDefault();
        void act(new FormData(event.currentTarget)).then((next) => {
          if (next.outcome === 'asked') keepDraft(null);
          else setState(next);
        });
      }}
    >
      <SwapFields {...props} state={state} />
    </form>
  );
}
