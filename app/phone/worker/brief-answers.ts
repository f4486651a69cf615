import { findInHand } from '@/lib/offline/find-in-hand';
import type { Status } from '../asked';
import type { Answers } from './answers';
import { contents, held } from './held';
import { now } from './now';
import { state } from './standing';

export type BriefAsk = 'status' | 'home' | 'find';

/** What is answered from the snapshot in brief, before the engine is there. */
export const briefAnswers: Answers<BriefAsk> = {
  status,
  home: () => {
    const down = contents().sets.filter(({ downSince }) => downSince !== null);
    return down.sort((a, b) => ((a.downSince ?? '') > (b.downSince ?? '') ? -1 : 1)).slice(0, 20);
  },
  find: ({ typed }) => findInHand(contents().sets, typed),
};

function status(): Status {
  const { about, waiting } = held;
  const { sets, motorCount } = contents();
  const mine = waiting.filter(({ message }) => message.userId === about?.userId);
  return {
    about:
      about === null
        ? null
        : { site: about.site, person: about.person, at: about.at, userId: about.userId, siteId: about.siteId },
    sets: sets.length,
    motors: motorCount,
    waiting: mine.filter((one) => one.state === 'waiting').length,
    toSettle: mine.filter((one) => one.state !== 'waiting').length,
    ofOthers: waiting.length - mine.length,
    ...state,
    now: now().toISOString(),
  };
}
