import { headers } from 'next/headers';
import { unstable_rethrow } from 'next/navigation';
import type { ReactNode } from 'react';
import { actorOf } from '@/lib/auth/actor';
import { NotAllowed } from '@/lib/auth/may';
import { answerStatus } from './answer-status';
import { failed } from './failed';
import { Failure } from './failure';
import { NotYours } from './not-yours';

/** A page whose refusals and failures are written on the server too, so that they can be read without script. */
export function answered<Props>(page: (props: Props) => Promise<ReactNode>) {
  return async (props: Props): Promise<ReactNode> => {
    try {
      return await page(props);
    } catch (error) {
      unstable_rethrow(error); // a redirect is Next's, and no failure
      const actor = error instanceof NotAllowed ? await actorOf(await headers()) : null;
      if (actor !== null) return <NotYours actor={actor} />;
      const { isGone, reference } = failed(error, 'a page failed');
      answerStatus(isGone ? 503 : 500);
      return <Failure isDatabaseGone={isGone} reference={reference} />;
    }
  };
}
