import type { Actor } from '@/lib/auth/may';
import { nearestTags } from '@/lib/register/queries/nearest-tags';
import { answerStatus } from '../answer-status';
import { FindForm, LONGEST_FIND } from '../find-form';
import { Sheet } from '../look/sheet';
import { personOf } from '../who-is-here';
import { NearTags } from './near-tags';

/** The answer to a tag that the site does not have: the tags most like it. */
export async function unknownSet(actor: Actor, tag: string) {
  const nearest = await nearestTags(actor, tag);
  answerStatus(404);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">No such set</h1>
      <NearTags typed={tag} nearest={nearest} />
      <FindForm typed={tag.slice(0, LONGEST_FIND)} />
    </Sheet>
  );
}
