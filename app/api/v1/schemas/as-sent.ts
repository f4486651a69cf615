import { z } from 'zod';
import 'zod-openapi';

/**
 * A record as it is answered: in the words in which it is sent, what is not known left out. The schema is the one that
 * reads it, told as it is written and not as it is taken inside.
 */
export const asSent = (id: string, schema: z.ZodType) =>
  z.unknown().meta({ id, override: z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as object });
