import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { face } from '../criteria/mount/face';
import { footHoles } from '../criteria/mount/foot-holes';
import { mounting } from '../criteria/mount/mounting';
import { shaftHeight } from '../criteria/mount/shaft-height';

/** Held, at height, bolted down and bolted on: all read of a motor is its mounting, which motors of one frame share. */
export const byMount = { criteria: [mounting, face, shaftHeight, footHoles], ofSet, ofMotor: motorDimensions };

function ofSet({ mounting: held, shaftDirection, failed, seat, base, coupling }: PumpSet): string {
  const { shimLimitMm, shimsPresentMm, slotting, transitionBase } = base;
  const { type, takeUpMm, hub, gapMm, gapMinMm, gapMaxMm } = coupling;
  // Where a transition base may be made, it is also asked to bring the shaft end to its place.
  const place = transitionBase === true ? [hub.lengthMm, gapMm, gapMinMm, gapMaxMm] : null;
  const mount =
    failed === null ? null : [failed.frame, failed.mounting, failed.poles, failed.design, failed.codeLetter];
  return JSON.stringify([
    [held, shaftDirection, seat, type, takeUpMm, shimLimitMm, shimsPresentMm, slotting, transitionBase, place],
    [mount, failed?.measured, failed?.ratings.map(({ hp }) => hp === null)],
  ]);
}
