import { IMPORT } from './ids';

/** What stands for the parts of a path in the examples. */
export const PARTS: Readonly<Record<string, string>> = { tag: 'P-900', number: 'M-900', frame: '184TC', id: IMPORT };
