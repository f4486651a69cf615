import { loadSum } from './load-sum';
import type { ReviewCase } from './review-case';

/** Beyond what a plate and a pump curve tell apart: common practice, no source; the engine's own limit. */
export const NEARLY = 1.02 * (1 + 1e-9);
const EXACTLY = 1 + 1e-9;

export interface LoadedShare {
  /** kW that the surroundings leave of the rating. */
  leftKw: number;
  /** Load over what is left. */
  ofLeft: number;
  /** Load over the rating at this supply, whatever the surroundings. */
  ofRated: number;
  isWithin: boolean;
}

/** How far the motor is loaded; null while load or rating is unknown. */
export function loadedShare(asked: ReviewCase): LoadedShare | null {
  const { row, derating } = asked.context;
  const sum = loadSum(asked);
  if (sum === null || row.kw === null) return null;
  const leftKw = row.kw * derating.factor;
  const ofLeft = sum.motorKw / leftKw;
  return { leftKw, ofLeft, ofRated: sum.motorKw / row.kw, isWithin: ofLeft <= EXACTLY };
}

/** True where the plate alone would carry it: heat, height or unbalance make it too much. */
export const isByDerating = ({ ofLeft, ofRated }: LoadedShare): boolean => ofLeft > EXACTLY && ofRated <= EXACTLY;
