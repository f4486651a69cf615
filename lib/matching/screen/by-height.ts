import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { seatOf } from '../context/seat';
import { shaftHeight } from '../criteria/mount/shaft-height';

/** The height of the shaft and what lies under the feet. */
export const byHeight = {
  criteria: [shaftHeight],
  ofSet: (set: PumpSet): string => {
    const { shimLimitMm, shimsPresentMm } = set.base;
    const { type, takeUpMm } = set.coupling;
    return `${set.mounting}|${seatOf(set).shaftHeight.value}|${shimLimitMm}|${shimsPresentMm}|${type}|${takeUpMm}`;
  },
  ofMotor: (motor: Motor): number | null => motorDimensions(motor).dimensions.shaftHeightMm.value,
};
