import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { hpOfKw } from '@/lib/units/power';
import { quantity } from '../quantity';

/** Both units: 5 hp is 3.73 kW, and a supplier may sell either. */
export function powerText(row: Rating | undefined): string | null {
  if (row?.kw == null) return null;
  return row.hp === null
    ? `${figure(row.kw)} kW (${figure(hpOfKw(row.kw), 1)} hp)`
    : `${figure(row.hp)} hp (${figure(row.kw)} kW)`;
}

/** A figure of each row of the plate: of several, each with its supply. Null: a row lacks it, so that it is to be told. */
export function ofRows({ ratings }: Motor, text: (row: Rating) => string | null): string | null {
  const told = ratings.map((row) => ({ row, value: text(row) }));
  const [only] = told;
  if (told.some(({ value }) => value === null) || only === undefined) return null;
  if (new Set(told.map(({ value }) => value)).size === 1) return only.value;
  return told
    .map(({ row, value }) => `${value} at ${quantity(row.volts, 'V', 0) ?? '?'}, ${quantity(row.hertz, 'Hz') ?? '?'}`)
    .join('; ');
}

export function polesText(poles: number | null, hertz: number | null): string | null {
  if (poles === null) return null;
  return hertz === null ? String(poles) : `${poles}, synchronous ${figure(synchronousSpeed(poles, hertz), 0)} rpm`;
}

/** Each row of its plate: one motor may be asked for two supplies. */
export function supplyText({ phases, ratings }: Motor): string | null {
  const rows = ratings.flatMap(({ volts, hertz }) =>
    volts === null || hertz === null ? [] : [`${figure(volts, 0)} V, ${figure(hertz, 0)} Hz`],
  );
  return phases === null || rows.length === 0 ? null : `${phases} × ${rows.join(' and ')}`;
}

export function connectionText(winding: Motor['winding'], connection: Rating['connection']): string {
  if (winding === 'star-delta-6') return 'delta at line voltage, six ends out';
  if (winding === 'part-winding-6') return 'part winding, six leads';
  return connection ?? 'stated in the offer';
}
