import { z } from 'zod';
import { WORK_IDS, type WorkId } from './work';

/** What a site decides for itself. Hours per kind of work, the price of energy, hours run in a year. */
export const siteSettings = z.strictObject({
  hours: z.record(z.enum(WORK_IDS), z.number().nonnegative().max(200)),
  pricePerKwh: z.number().nonnegative().max(10).nullable(),
  currency: z.string().length(3).nullable(),
  hoursPerYear: z.number().nonnegative().max(8_784).nullable(),
  /** Where the set states no shim limit: the greatest stack of shims, mm. */
  shimLimitMm: z.number().nonnegative().max(50),
});
export interface SiteSettings extends z.output<typeof siteSettings> {
  hours: Record<WorkId, number>;
}
