import { makeReady } from './offers';
import { wholeAnswers } from './whole-answers';

/** What the worker fetches behind its first answers. */
export { makeReady, wholeAnswers };
