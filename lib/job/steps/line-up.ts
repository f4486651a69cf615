import type { PumpSet } from '@/lib/plant/set';
import { SOFT_FOOT_MM } from '@/lib/standards/alignment-tolerance';
import { figure } from '@/lib/units/figure';
import { box, type Step, value } from '../step';
import { isSplit } from './coupled';

/** A motor on its feet is checked for a soft one; shafts are lined up where two of them meet in a coupling. */
export function lineUp(set: PumpSet): Step[] {
  const split = isSplit(set);
  return [
    ...(set.mounting === 'face'
      ? []
      : [
          value(
            'line-up',
            'soft-foot',
            `Soft foot, at most ${figure(SOFT_FOOT_MM)} mm`,
            'softFootMm',
            'Soft foot',
            'mm',
          ),
        ]),
    ...(split === 'coupling' ? SHAFTS : []),
    ...(split === 'belts' ? [box('line-up', 'belts', 'Alignment: sheaves in line, belt tension set')] : []),
  ];
}

const SHAFTS: readonly Step[] = [
  value('line-up', 'offset', 'Alignment, offset of the shafts', 'offsetMm', 'Offset', 'mm'),
  value('line-up', 'gap', 'Alignment, angle: gap per 100 mm of coupling', 'gapMmPer100', 'Gap per 100 mm', 'mm'),
];
