import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Dimension } from '@/lib/standards/dimension';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { seatOf } from '../context/seat';
import { footHoles } from '../criteria/mount/foot-holes';

/** Foot holes and bolts; a transition base asks for height as well. */
export const byFootHoles = {
  criteria: [footHoles],
  ofSet: (set: PumpSet): string => {
    const { holesAcross, holesAlong, bolt, shaftHeight } = seatOf(set);
    const { slotting, transitionBase, shimsPresentMm, shimLimitMm } = set.base;
    const height = transitionBase === true ? `${shaftHeight.value}|${shimsPresentMm}|${shimLimitMm}` : '';
    return `${set.mounting}|${spacings(holesAcross)}|${spacings(holesAlong)}|${bolt.value}|${slotting}|${height}`;
  },
  ofMotor: (motor: Motor): string => {
    const { holesAcrossMm, holesAlongMm, footHoleMm, shaftHeightMm } = motorDimensions(motor).dimensions;
    return `${spacings(holesAcrossMm)}|${spacings(holesAlongMm)}|${footHoleMm.value}|${shaftHeightMm.value}`;
  },
};

const spacings = ({ value, alternatives }: Dimension): string =>
  alternatives.length === 0 ? `${value}` : `${value} ${alternatives.join(' ')}`;
