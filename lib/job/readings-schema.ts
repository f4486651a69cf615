import { z } from 'zod';
import { fromZeroTo, oneOf, told, upTo } from '@/lib/plant/told';
import { MOST, type PhaseAmps } from './readings';
import { STEP_IDS, type StepId } from './step-ids';

const amps = told(z.array(fromZeroTo(MOST.amps)).length(3)).transform((three): PhaseAmps => {
  const [l1 = null, l2 = null, l3 = null] = three === null ? [] : three;
  return [l1, l2, l3];
});

/** Readings as they are sent: what is left out was not read. */
export const readingsSchema = z.strictObject({
  ticked: z
    .array(z.enum(STEP_IDS))
    .max(STEP_IDS.length)
    .nullish()
    .transform((ids): readonly StepId[] => STEP_IDS.filter((id) => ids?.includes(id))),
  insulationMohm: fromZeroTo(MOST.insulationMohm),
  rotation: oneOf(['right', 'wrong']),
  overloadA: upTo(MOST.overloadA),
  softFootMm: fromZeroTo(MOST.softFootMm),
  offsetMm: fromZeroTo(MOST.offsetMm),
  gapMmPer100: fromZeroTo(MOST.gapMmPer100),
  amps,
});
