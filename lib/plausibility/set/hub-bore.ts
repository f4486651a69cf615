import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';

/**
 * Does the shaft that is in the hub fit its bore? In mm. A shaft larger than the bore cannot have gone in; a smaller one
 * needs a bushing or a sleeve. Not asked without a bore, a motor or its shaft.
 */
export function hubBore({ coupling }: PumpSet, motor: Motor | null): Doubt | null {
  const have = coupling.hub.boreMm;
  if (have === null || motor === null || (coupling.input !== null && coupling.input !== 'hub')) return null;
  const { value, alternatives, cite } = motorDimensions(motor).dimensions.shaftDiameterMm;
  if (value === null) return null;
  const shafts = [value, ...alternatives];
  const least = Math.min(...shafts);
  const most = Math.max(...shafts);
  const isLarger = least > have + ROUNDED_MM;
  const isLoose = most < have - ROUNDED_MM && coupling.hub.bushed !== true;
  if (!isLarger && !isLoose) return null;
  const apart = isLarger ? least - have : have - most;
  return {
    rule: 'hub-bore',
    thing: 'set',
    grade: isLarger ? 'wrong' : 'doubtful',
    field: 'coupling.hub.boreMm',
    have,
    expected: isLarger ? least : most,
    unit: 'mm',
    says: isLarger
      ? `Shaft ${figure(least, 3)} − bore ${figure(have, 3)} = ${figure(apart, 3)} mm: the shaft of ${motor.id} does not go in.`
      : `Bore ${figure(have, 3)} − shaft ${figure(most, 3)} = ${figure(apart, 3)} mm: the hub is loose on ${motor.id}, and no bushing is told.`,
    cite: cite ?? 'measured',
    figures: figuresOf({
      bore: have,
      shaft: value,
      bushed: coupling.hub.bushed === null ? null : String(coupling.hub.bushed),
    }),
  };
}

/** 34.9 mm is 1-3/8 in as people write it; 28 mm and 1-1/8 in differ by 0.575 mm. */
const ROUNDED_MM = 0.15;
