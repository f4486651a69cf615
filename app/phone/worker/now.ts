import { held } from './held';

/** The server's clock as the phone can tell it. */
export const now = () => new Date(Date.now() - (held.about?.clockAhead ?? 0));
