import { z } from 'zod';
import { motor } from './motor';
import { set } from './set';
import { day, THOUGH_REFUSED } from './told';

/** What `assess` is asked: a set whose motor failed and the motors that might go in. */
export const assessCase = z
  .strictObject({ asOf: day(), set, candidates: z.array(motor).max(10_000) })
  .superRefine(({ candidates }, ctx) => {
    if (!Array.isArray(candidates)) return;
    const seen = new Set<string>();
    for (const [i, candidate] of candidates.entries()) {
      const id: unknown = candidate?.id;
      if (typeof id !== 'string') continue;
      if (seen.has(id))
        ctx.addIssue({
          code: 'custom',
          path: ['candidates', i, 'id'],
          input: id,
          message: 'is already used: ids must differ',
        });
      seen.add(id);
    }
  }, THOUGH_REFUSED);

export type AssessCase = z.output<typeof assessCase>;
