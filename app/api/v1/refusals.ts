import type { Operation } from './operation';

/** What an operation may answer instead of what was asked for: its status, and what that says. */
export const refusals = ({ parts, query, body, isGuarded, once }: Operation): Readonly<Record<number, string>> => ({
  ...(body && { 400: 'The body is not what its type says' }),
  ...(once && { 400: 'The body is not what its type says, or the key is none' }),
  401: 'Nobody is known by what was sent',
  403: 'The role of who asks may not do this, or their token lacks the scope',
  ...(parts && { 404: 'There is no such thing at this site' }),
  ...(body && { 413: 'It is too large', 415: 'It is of another type' }),
  ...(query && { 422: 'The question is not understood; every problem is told' }),
  ...(body && { 422: 'It is not understood, or cannot stand so; every problem is told' }),
  ...(once && { 422: 'It is not understood, cannot stand so, or the key was used for something else' }),
  ...(isGuarded && { 428: 'Say by If-Match what you read' }),
  500: 'Something failed here; a reference is told',
  503: 'The database does not answer; try again in a minute',
});
