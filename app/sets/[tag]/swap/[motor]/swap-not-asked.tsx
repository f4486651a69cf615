import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { candidatesPath } from '@/app/paths';

/** The motor can no longer be taken, as one knew before the form was sent. */
export function SwapNotAsked({ tag, gone }: { tag: string; gone: string }) {
  return (
    <>
      <p className="mt-4">{gone} Nothing was recorded.</p>
      <ActionBar>
        <Action href={candidatesPath(tag)}>What can go in?</Action>
      </ActionBar>
    </>
  );
}
