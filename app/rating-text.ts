import type { Motor } from '@/lib/plant/motor';
import { figure } from '@/lib/units/figure';

/** A motor in a line: "184T, 5 hp, 1750 rpm, 460 V 60 Hz". What is not known is left out. */
export function ratingText(motor: Motor): string {
  const row = motor.ratings[0] ?? null;
  if (row === null) return motor.frame ?? 'plate not read';
  const volts =
    row.volts === null ? null : `${figure(row.volts)} V${row.hertz === null ? '' : ` ${figure(row.hertz)} Hz`}`;
  return [motor.frame, powerText(motor), row.rpm === null ? null : `${figure(row.rpm)} rpm`, volts]
    .filter((part) => part !== null)
    .join(', ');
}

/** The power of the first rating as the plate has it; null: not known. */
export function powerText({ ratings }: Motor): string | null {
  const row = ratings[0] ?? null;
  if (row === null) return null;
  return row.hp !== null ? `${figure(row.hp)} hp` : row.kw !== null ? `${figure(row.kw)} kW` : null;
}
