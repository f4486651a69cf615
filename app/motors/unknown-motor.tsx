import type { Actor } from '@/lib/auth/may';
import { answerStatus } from '../answer-status';
import { Action } from '../look/action';
import { ActionBar } from '../look/action-bar';
import { Sheet } from '../look/sheet';
import { Tag } from '../look/tag';
import { personOf } from '../who-is-here';

/** The answer to a plant number that the site does not have. */
export function unknownMotor(actor: Actor, number: string) {
  answerStatus(404);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">No such motor</h1>
      <p className="mt-2">
        No motor of this site has the plant number <Tag>{number}</Tag>. It may be mistyped, or belong to another site.
      </p>
      <ActionBar>
        <Action href="/stores">Motors in the stores</Action>
        <Action href="/" second>
          Register
        </Action>
      </ActionBar>
    </Sheet>
  );
}
