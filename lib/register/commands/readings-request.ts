import { z } from 'zod';
import { isTold } from '@/lib/job/readings';
import { readingsSchema } from '@/lib/job/readings-schema';
import { told } from '@/lib/plant/told';

/** Readings of a swap that was recorded before. */
export const readingsRequest = z.strictObject({
  /** Made once by whoever asks: the same key is carried out once, however often it is sent. */
  key: z.uuid(),
  swapId: z.uuid(),
  readings: readingsSchema.refine(isTold, 'must tell at least one reading or box'),
  /** The phone's own moment, kept as a note: its clock may be wrong. */
  takenAt: told(z.iso.datetime({ offset: true })),
});

export type ReadingsRequest = z.output<typeof readingsRequest>;
