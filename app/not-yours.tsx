import type { Actor } from '@/lib/auth/may';
import { answerStatus } from './answer-status';
import { Empty } from './look/empty';
import { Sheet } from './look/sheet';
import { ROLE_WORDS } from './role-words';
import { personOf } from './who-is-here';

/** A page that this person's role does not open: it says so, and who can help. */
export function NotYours({ actor }: { actor: Actor }) {
  answerStatus(403);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <Empty
        title="Not yours to do"
        says={`Your role here is ${ROLE_WORDS[actor.role].toLowerCase()}, and it does not open this page. An administrator of the site can change it.`}
        isWholePage
      />
    </Sheet>
  );
}
