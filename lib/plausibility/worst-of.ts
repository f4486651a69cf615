import type { Doubt } from './doubt';

/** The first that is wrong, else the first: what one rule found of one thing in several places is answered once. */
export const worstOf = (doubts: readonly (Doubt | null)[]): Doubt | null => {
  const found = doubts.filter((doubt) => doubt !== null);
  return found.find(({ grade }) => grade === 'wrong') ?? found[0] ?? null;
};
