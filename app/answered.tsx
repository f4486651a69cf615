import { unstable_rethrow } from 'next/navigation';
import type { ReactNode } from 'react';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { answerStatus } from './answer-status';
import { Failure } from './failure';

/** A page whose failures are written on the server too, so that they can be read without script. */
export function answered<Props>(page: (props: Props) => Promise<ReactNode>) {
  return async (props: Props): Promise<ReactNode> => {
    try {
      return await page(props);
    } catch (error) {
      unstable_rethrow(error); // a redirect is Next's, and no failure
      const isGone = isDatabaseGone(error);
      const reference = crypto.randomUUID().slice(0, 8);
      console.error(`${reference} ${isGone ? 'the database is away' : 'a page failed'}`, error);
      answerStatus(isGone ? 503 : 500);
      return <Failure isDatabaseGone={isGone} reference={reference} />;
    }
  };
}
