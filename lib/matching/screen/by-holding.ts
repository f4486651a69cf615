import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { face } from '../criteria/mount/face';
import { mounting } from '../criteria/mount/mounting';

/** Feet and face. All read of a motor is its mounting, which motors of one frame share. */
export const byHolding = { criteria: [mounting, face], ofSet, ofMotor: motorDimensions };

function ofSet({ mounting, shaftDirection, failed, seat }: PumpSet): string {
  if (failed === null) return `${mounting}|${shaftDirection}|${seat.face}`;
  const { frame, mounting: code, poles, design, codeLetter, ratings, measured } = failed;
  const { pitchCircleMm, spigotMm, faceDiameterMm, shaftHeightMm } = measured;
  const isInHp = ratings.every(({ hp }) => hp !== null);
  return `${mounting}|${shaftDirection}|${seat.face}|${frame}|${code}|${poles}|${design}|${codeLetter}|${isInHp}|${pitchCircleMm}|${spigotMm}|${faceDiameterMm}|${shaftHeightMm}`;
}
