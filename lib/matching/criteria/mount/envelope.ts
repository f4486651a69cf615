import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { block, type Finding, ok, toRead } from '../../finding';

/** Is there room for its overall length? In mm. Not asked where the set states no limit: no frame fixes the length. */
export function envelope(set: PumpSet, { lengthMm: have }: Motor): Finding | null {
  const need = set.base.maxLengthMm;
  if (need === null) return null;

  const compared = { criterion: 'envelope', have, need, unit: 'mm', cite: CITE } as const;
  if (have === null) return toRead(compared, 'Overall length unknown; room here is limited.', READING, 5);
  if (have > need)
    return block(compared, `${figure(have)} mm long, ${figure(have - need)} mm more than there is room for.`);
  return ok(compared, `${figure(have)} mm long: there is room.`);
}

const CITE = 'limit stated for the set; no frame fixes the overall length';
const READING = 'Measure this motor from shaft end to fan cover';
