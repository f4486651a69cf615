import { z } from 'zod';
import { kwOfHp } from '@/lib/units/power';
import { isAbove, oneOf, THOUGH_REFUSED, told, upTo } from './told';

export const CONNECTIONS = ['star', 'delta', 'series-star', 'parallel-star', 'series-delta', 'parallel-delta'] as const;

/**
 * One row of a nameplate: volts between lines, hertz, power, full-load speed in rpm, amps in the line.
 * Power is told in hp or kW, never both; inside, `kw` is always the power and `hp` stays as stamped.
 */
export const rating = z
  .strictObject({
    volts: upTo(15_000),
    voltsMin: upTo(15_000),
    voltsMax: upTo(15_000),
    hertz: upTo(400),
    hp: upTo(20_000),
    kw: upTo(15_000),
    rpm: upTo(24_000),
    amps: upTo(5_000),
    connection: oneOf(CONNECTIONS),
    pf: told(z.number().positive().max(1)),
    efficiencyPct: upTo(100),
    serviceFactor: told(z.number().min(1).max(2)),
  })
  .superRefine(({ hp, kw, volts, voltsMin, voltsMax }, ctx) => {
    const refuse = (key: string, input: unknown, message: string) =>
      ctx.addIssue({ code: 'custom', path: [key], input, message });
    if (typeof hp === 'number' && typeof kw === 'number') refuse('kw', kw, 'give hp or kw, not both');
    if (isAbove(voltsMin, voltsMax)) refuse('voltsMin', voltsMin, `must not be above voltsMax (${voltsMax})`);
    if (isAbove(voltsMin, volts)) refuse('volts', volts, `must not be below voltsMin (${voltsMin})`);
    if (isAbove(volts, voltsMax)) refuse('volts', volts, `must not be above voltsMax (${voltsMax})`);
  }, THOUGH_REFUSED)
  .transform((row) => ({ ...row, kw: row.hp === null ? row.kw : kwOfHp(row.hp) }));

export type Rating = z.output<typeof rating>;
