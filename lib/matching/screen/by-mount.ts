import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { contextOf } from '../context';
import { face } from '../criteria/mount/face';
import { footHoles } from '../criteria/mount/foot-holes';
import { mounting } from '../criteria/mount/mounting';
import { shaftDiameter } from '../criteria/mount/shaft-diameter';
import { shaftHeight } from '../criteria/mount/shaft-height';
import type { Bits } from './bits';
import { classesOf, passing } from './classes';

/** Held, at height, bolted down, bolted on, and the shaft in the hub: asked once for each kind of seat and of mount. */
export function byMount(motors: readonly Motor[], settings: SiteSettings): (set: PumpSet) => Bits {
  const classes = classesOf(motors, motorDimensions);
  const known = new Map<string, Bits>();
  return (set) => {
    const key = seatKey(set);
    const before = known.get(key);
    if (before !== undefined) return before;
    const fit = passing(classes, motors.length, (motor) => {
      const context = contextOf(set, motor, { settings, asOf: null });
      return CRITERIA.every((ask) => ask(set, motor, context)?.grade !== 'block');
    });
    known.set(key, fit);
    return fit;
  };
}

const CRITERIA = [mounting, face, shaftHeight, footHoles, shaftDiameter];

/** All that the five criteria read of a set. */
function seatKey({ mounting: held, shaftDirection, failed, seat, base, coupling }: PumpSet): string {
  const { type, input, hub, quill, takeUpMm, sheave } = coupling;
  const { shimLimitMm, shimsPresentMm, slotting, transitionBase } = base;
  const shift = transitionBase === true ? JSON.stringify([coupling.gapMm, coupling.gapMinMm, coupling.gapMaxMm]) : '';
  const frame = failed === null ? null : [failed.frame, failed.mounting, failed.poles, failed.measured];
  return JSON.stringify([
    [held, shaftDirection, frame, seat],
    [type, input, hub, quill, takeUpMm, sheave.changeable, shift],
    [shimLimitMm, shimsPresentMm, slotting, transitionBase],
  ]);
}
