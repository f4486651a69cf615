import { figure } from '@/lib/units/figure';

/** A figure with its unit, as a specification writes it; null stays null: nobody has told. */
export const quantity = (value: number | null | undefined, unit: string, digits = 1): string | null =>
  value === null || value === undefined ? null : `${figure(value, digits)} ${unit}`;
