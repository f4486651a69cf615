import { z } from 'zod';
import type { Operation } from '../operation';
import { purchase } from '../schemas/purchase';

export const purchaseOp = {
  action: 'set.assess',
  ...{ method: 'get', path: '/purchase', id: 'purchase', summary: 'What to buy for one set or for several' },
  says: 'One motor for all of them, as strict as each asks, and how it is judged in each. Nothing is kept.',
  query: z.strictObject({
    tag: z
      .array(z.string().min(1).max(60))
      .min(1)
      .max(60)
      .meta({ description: 'The tags of the sets', example: ['P-900'] }),
    rating: z
      .string()
      .min(1)
      .max(60)
      .optional()
      .describe('The id of an option; the one that serves most where not told'),
  }),
  answers: {
    200: { says: 'The specification, and where it would serve', schema: purchase },
    404: { says: 'A set or a rating that is not there' },
  },
} as const satisfies Operation;
