import { AskForm } from '../ask-form';
import { runsAgainHere } from './runs-again-here';

/** "It runs again": the open faults of a set, or one of them, are closed by a repair where it stands. */
export function RunsAgain({ of, to }: { of: { setId: string } | { faultId: string }; to: string }) {
  return (
    <AskForm
      id="runs-again"
      action={runsAgainHere}
      folded="It runs again"
      button="It runs again"
      fields={[
        'setId' in of
          ? { kind: 'hidden', name: 'setId', value: of.setId }
          : { kind: 'hidden', name: 'faultId', value: of.faultId },
        { kind: 'hidden', name: 'to', value: to },
        {
          kind: 'text',
          name: 'how',
          label: 'What was done?',
          hint: 'With its own motor. A motor put in its place is recorded as a swap.',
          autoComplete: 'off',
        },
      ]}
    />
  );
}
