import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';

/** A page that lies on no phone, met without a network. */
export function ElsewhereScreen() {
  return (
    <>
      <h1 className="page">This page needs the network</h1>
      <p className="pt-3">
        It is not among what lies on this phone. Sets, motors, what can go in and the record of a swap are.
      </p>
      <ActionBar>
        <Action href="/pump">At the pump</Action>
        <button className="second" type="button" onClick={() => location.reload()}>
          Try again
        </button>
      </ActionBar>
    </>
  );
}
