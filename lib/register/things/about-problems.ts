import { stateOf } from '@/lib/fields/state';
import type { Problem } from '@/lib/plant/reading';

/** What the register keeps beside the contract is text of one line, or of several in a note: each up to its length. */
export function aboutProblems(about: object, longest: Readonly<Record<string, number>>): Problem[] {
  const told = stateOf(about);
  return Object.entries(longest).flatMap(([path, most]) => {
    const value = told[path];
    if (value === undefined) return [];
    const isText = typeof value === 'string' && value.trim() !== '' && value.length <= most;
    const isClean = typeof value === 'string' && !(MANY_LINES.has(path) ? NOT_TEXT : NOT_ONE_LINE).test(value);
    if (isText && isClean) return [];
    const shown = String(value).slice(0, 80);
    return [{ path, value: shown, says: `must be text of 1 to ${most} characters` }];
  });
}

const MANY_LINES = new Set(['note', 'unread']);
const NOT_ONE_LINE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u;
const NOT_TEXT = /[\p{Cs}]|(?![\n\t\r])\p{Cc}/u;
