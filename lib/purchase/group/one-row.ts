import type { Rating } from '@/lib/plant/rating';
import { figure } from '@/lib/units/figure';
import { type Contradiction, shared, type Told } from './contradiction';
import { greatest, least } from './strictest';

/** A set's row, and what it loads its motor to. */
export interface RowOfSet {
  tag: string;
  row: Rating;
  /** Null: not known. */
  leastKw: number | null;
}

/** Two windings in series or parallel, or in star or delta: one motor has both voltages. */
const DUAL = [2, Math.sqrt(3)] as const;
const NEAR = 0.03;
/** Volts over hertz stay within what one winding bears: as the judgement has it, 0.95 to 1.10. */
const FLUX = { low: 0.95, high: 1.1 } as const;

/**
 * The rows that the plate of one motor must have for all of them: one for each supply, where one motor can have them side
 * by side; else that of most. Amps at most and efficiency at least are the strictest; the speed is that of the greatest
 * load, since the others turn nearer the field.
 */
export function oneRow(rows: readonly RowOfSet[], noted: Contradiction[]): Rating[] {
  const supplies = [...new Map(rows.map((one) => [keyOf(one.row), one.row])).values()].sort(byVolts);
  const [first, second] = supplies;
  if (first === undefined) return [];
  const isOne = supplies.length === 1 || (supplies.length === 2 && second !== undefined && goTogether(first, second));
  if (isOne) return supplies.map((supply) => merged(rows.filter(({ row }) => keyOf(row) === keyOf(supply))));
  const told = rows.map(({ tag, row }): Told<Rating> => ({ tag, value: row }));
  const most = shared(told, { id: 'supply', label: 'Volts, hertz and connection' }, supplyText, noted) ?? first;
  return [merged(rows.filter(({ row }) => keyOf(row) === keyOf(most)))];
}

const byVolts = (a: Rating, b: Rating) => (b.volts ?? 0) - (a.volts ?? 0) || (b.hertz ?? 0) - (a.hertz ?? 0);
const keyOf = ({ volts, hertz, connection }: Rating) => `${volts} ${hertz} ${connection}`;

function goTogether(a: Rating, b: Rating): boolean {
  if (a.volts === null || b.volts === null || a.hertz === null || b.hertz === null) return false;
  if (a.hertz !== b.hertz) {
    const flux = a.volts / a.hertz / (b.volts / b.hertz);
    return flux >= FLUX.low && flux <= FLUX.high;
  }
  const ratio = Math.max(a.volts, b.volts) / Math.min(a.volts, b.volts);
  return DUAL.some((one) => Math.abs(ratio / one - 1) <= NEAR);
}

function merged(rows: readonly RowOfSet[]): Rating {
  const [ruling] = rows.toSorted((a, b) => (b.leastKw ?? 0) - (a.leastKw ?? 0));
  if (ruling === undefined) throw new Error('no row to merge');
  const told = rows.find(({ row }) => row.rpm !== null);
  return {
    ...ruling.row,
    rpm: ruling.row.rpm ?? told?.row.rpm ?? null,
    amps: least(rows.map(({ row }) => row.amps)),
    efficiencyPct: greatest(rows.map(({ row }) => row.efficiencyPct)),
  };
}

const supplyText = ({ volts, hertz, connection }: Rating) =>
  [
    volts === null ? 'volts not told' : `${figure(volts, 0)} V`,
    hertz === null ? 'hertz not told' : `${figure(hertz)} Hz`,
    connection,
  ]
    .filter((part) => part !== null)
    .join(', ');
