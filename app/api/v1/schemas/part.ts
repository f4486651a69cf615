import { z } from 'zod';

/** How a part of a list is asked for. */
export const part = {
  limit: z.coerce.number().int().min(1).max(200).optional().describe('At most so many; 50 where not told'),
  after: z.string().max(2_000).optional().describe('The “next” of the part before'),
};
/** A part of a list, and where the next begins. */
export const partOf = <T extends z.ZodType>(item: T) =>
  z.strictObject({
    items: z.array(item),
    next: z.string().nullable().describe('Sent as “after”; null: the list ends'),
  });
