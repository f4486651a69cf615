import { z } from 'zod';
import { readingsSchema } from '@/lib/job/readings-schema';
import { CRITERIA } from '@/lib/matching/finding';
import { fromZeroTo, text, told, upTo } from '@/lib/plant/told';
import { WORK_IDS } from '@/lib/plant/work';

const id = z.uuid();

/** Several lines of a person's own words. */
const words = z.string().trim().min(1).max(2_000);

/** What a person says who has swapped a motor. The register adds who, when and how it was judged. */
export const swapRequest = z.strictObject({
  /** Made once by whoever asks: the same key is carried out once, however often it is sent. */
  key: id,
  setId: id,
  motorInId: id,
  /** The motor the person found in the set; null when it stood empty. Another one there now means somebody was first. */
  motorOutId: id.nullable(),
  /** The set the motor was taken from; null: it came from a shelf. */
  fromSetId: told(id),
  /** Where the motor that came out went; null only when none came out. */
  outTo: z
    .discriminatedUnion('place', [
      z.strictObject({ place: z.literal('on-shelf'), shelfId: id }),
      z.strictObject({ place: z.literal('at-repair') }),
      z.strictObject({ place: z.literal('scrapped') }),
    ])
    .nullable(),
  /** Why the old motor failed, or was changed. */
  why: text(200),
  note: told(words),
  workDone: z
    .array(z.strictObject({ id: z.enum(WORK_IDS), what: text(300), hours: z.number().min(0).max(200) }))
    .max(WORK_IDS.length * 2),
  /** Checks cleared and signed by the person who records. */
  checks: z.array(z.strictObject({ criterion: z.enum(CRITERIA), says: text(500) })).max(CRITERIA.length),
  insulationMohm: fromZeroTo(1_000_000),
  overloadA: upTo(5_000),
  /** The stack of shims under the feet now; null: not told, and the set keeps what it had. */
  shimsPresentMm: fromZeroTo(100),
  /** The phone's own moment, kept as a note: its clock may be wrong. */
  doneAt: told(z.iso.datetime({ offset: true })),
  /** What was read and ticked at the pump; null: not told. */
  readings: told(readingsSchema),
});

export type SwapRequest = z.output<typeof swapRequest>;
