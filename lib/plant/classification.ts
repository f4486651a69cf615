import { z } from 'zod';
import { told } from './told';

const iec = z.strictObject({
  scheme: z.literal('IEC'),
  zone: z.literal([0, 1, 2, 20, 21, 22]),
  group: told(z.enum(['IIA', 'IIB', 'IIC', 'IIIA', 'IIIB', 'IIIC'])),
  tempC: told(z.number().positive().max(500)),
});

const nec = z.strictObject({
  scheme: z.literal('NEC'),
  class: z.literal([1, 2, 3]),
  division: z.literal([1, 2]),
  /** None: the group is not known. */
  groups: z
    .array(z.enum(['A', 'B', 'C', 'D', 'E', 'F', 'G']))
    .max(7)
    .nullish()
    .transform((groups) => groups ?? []),
  tempCode: told(z.string().regex(/^T[1-6][A-D]?$/, 'a temperature code such as T4 or T3C')),
});

/** The hazardous-area class of a place, or the one a motor is marked for. `tempC` is a surface limit. */
export const classification = z.discriminatedUnion('scheme', [iec, nec]);
export type Classification = z.output<typeof classification>;
