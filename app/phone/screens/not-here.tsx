import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';

/** The phone does not have what was asked for. */
export function NotHere({ what, name }: { what: 'set' | 'motor'; name: string }) {
  return (
    <>
      <h1 className="page">
        No {what} <bdi>{name}</bdi> on this phone
      </h1>
      <p className="pt-3">
        It may have been entered since the snapshot was taken, or be named otherwise. Find it by what it serves, or
        renew the snapshot where there is a network.
      </p>
      <ActionBar>
        <Action href={`/pump/find?q=${encodeURIComponent(name)}`}>Find it</Action>
      </ActionBar>
    </>
  );
}
