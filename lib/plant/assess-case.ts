import { z } from 'zod';
import { motor } from './motor';
import { set } from './set';
import { day } from './told';

/** What `assess` is asked: a set whose motor failed and the motors that might go in. */
export const assessCase = z.strictObject({ asOf: day(), set, candidates: z.array(motor).max(10_000) }).check((ctx) => {
  const seen = new Set<string>();
  for (const [i, { id }] of ctx.value.candidates.entries()) {
    if (seen.has(id))
      ctx.issues.push({
        code: 'custom',
        path: ['candidates', i, 'id'],
        input: id,
        message: 'is already used: ids must differ',
      });
    seen.add(id);
  }
});

export type AssessCase = z.output<typeof assessCase>;
