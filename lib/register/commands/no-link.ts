import { refused } from './refused';

/** In the same words whether it was used, revoked, too old or never was: a stranger learns nothing. */
export const NO_LINK = refused('link', 'no longer works: ask an administrator for a new one');
