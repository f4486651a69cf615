import { z } from 'zod';
import { fromZeroTo, told, upTo, yesNo } from './told';

const percent = () => upTo(100);

/** What a person told for repair or replace. Null: not told; what the plate or the site tells then stands in its place. */
export const repairFigures = z.strictObject({
  /** What the repair is offered for, in the site's currency. */
  repairCost: fromZeroTo(100_000_000),
  /** What a new motor is offered for, in the site's currency. */
  newPrice: upTo(100_000_000),
  /** Before it failed; null: as on the plate. */
  efficiencyPct: percent(),
  /** By the repair, in points of efficiency; a loss is below zero. */
  changePts: told(z.number().min(-10).max(10)),
  /** Of the new motor; null: not told. */
  newEfficiencyPct: percent(),
  loadPct: upTo(150),
  hoursPerYear: upTo(8_784),
  pricePerKwh: upTo(10),
  /** So many years are looked ahead. */
  years: upTo(40),
  /** Whether the winding is renewed. */
  isRewind: yesNo(),
});

export type RepairFigures = z.output<typeof repairFigures>;
