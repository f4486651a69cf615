import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { block, type Finding, ok, toRead } from '../../finding';

/** May it be lifted in here? Mass in kg. Not asked where the set states no lifting limit: no frame fixes the mass. */
export function lift(set: PumpSet, { massKg: have }: Motor): Finding | null {
  const need = set.base.maxMassKg;
  if (need === null) return null;

  const compared = { criterion: 'lift', have, need, unit: 'kg', cite: CITE } as const;
  if (have === null) return toRead(compared, 'Mass unknown; this place has a lifting limit.', READING, 5);
  if (have > need)
    return block(
      compared,
      `${figure(have)} kg, ${figure(have - need)} kg over the ${figure(need)} kg that may be lifted here.`,
    );
  return ok(compared, `${figure(have)} kg may be lifted here.`);
}

const CITE = 'limit stated for the set; no frame fixes the mass';
const READING = 'Read the mass on this motor’s plate or in the maker’s sheet, or weigh it';
