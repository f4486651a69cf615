import { z } from 'zod';

/** RFC 9457. */
export const problemAnswer = z
  .object({
    type: z.string(),
    status: z.number().int(),
    title: z.string(),
    problems: z
      .array(z.strictObject({ path: z.string(), value: z.string().nullable(), says: z.string() }))
      .optional()
      .describe('Everything that was wrong with what was sent: where, what stood there, what is right'),
    stands: z.unknown().optional().describe('Of a change that came too late: the record as it stands'),
  })
  .meta({ id: 'Problem' });
