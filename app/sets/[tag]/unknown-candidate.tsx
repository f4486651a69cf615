import { answerStatus } from '@/app/answer-status';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { candidatesPath, setPath } from '@/app/paths';
import { personOf } from '@/app/who-is-here';
import type { Actor } from '@/lib/auth/may';

/** The answer to a motor that is neither the site's nor a rating to buy. */
export function unknownCandidate(actor: Actor, tag: string, id: string) {
  answerStatus(404);
  return (
    <Sheet person={personOf(actor)} back={{ href: setPath(tag), words: tag }}>
      <h1 className="page">No such motor</h1>
      <p className="mt-2">
        No motor of this site has the plant number <Tag>{id}</Tag>, and it is no standard rating for <Tag>{tag}</Tag>.
      </p>
      <ActionBar>
        <Action href={candidatesPath(tag)}>What can go in?</Action>
      </ActionBar>
    </Sheet>
  );
}
