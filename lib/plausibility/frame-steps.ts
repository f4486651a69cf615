import { iecOutputs } from '@/lib/standards/tables/iec-outputs';
import { nemaOutputs } from '@/lib/standards/tables/nema-outputs';
import { kwOfHp } from '@/lib/units/power';

/** The frames that a standard assigns to a power, as steps in its row of sizes, smallest 0. */
export interface Assigned {
  least: number;
  most: number;
  /** As printed: "254T", "132S". */
  frames: readonly string[];
}

/** Step of a NEMA frame number among the T frames of MG 1 Part 13: the largest of them that is no larger. Null below 143. */
export function nemaStep(number: number): number | null {
  const step = NUMBERS.findLastIndex((one) => one <= number);
  return step < 0 || number > (NUMBERS.at(-1) as number) ? null : step;
}

/** Step of an IEC shaft height in mm; null for a height that has no assignment. */
export function iecStep(height: number): number | null {
  const step = HEIGHTS.indexOf(height);
  return step < 0 ? null : step;
}

/** What Part 13 assigns, open and enclosed, to the smallest printed power that is no less. Null beyond the table. */
export function nemaAssigned(kw: number, poles: number): Assigned | null {
  const rows = nemaOutputs.rows.filter(({ rpm }) => rpm * poles === RPM_POLES_60_HZ);
  const frames = framesFor(
    rows,
    ({ hp }) => kwOfHp(hp),
    kw,
    ({ frame, beltFrame }) => (beltFrame === undefined ? [frame[0]] : [frame[0], beltFrame[0]]),
  );
  return assigned(frames, (frame) => NUMBERS.indexOf(numberOf(frame)));
}

/** What EN 50347 and the texts beside it assign to the smallest printed output that is no less. Null beyond the table. */
export function iecAssigned(kw: number, poles: number): Assigned | null {
  const rows = iecOutputs.rows.filter((row) => row.poles === poles);
  const frames = framesFor(
    rows,
    (row) => row.kw,
    kw,
    ({ frame, others }) => [frame[0], ...(others ?? [])],
  );
  return assigned(frames, (frame) => HEIGHTS.indexOf(numberOf(frame)));
}

function framesFor<Row>(
  rows: readonly Row[],
  kwOf: (row: Row) => number,
  kw: number,
  names: (row: Row) => readonly string[],
): readonly string[] {
  const powers = rows.map(kwOf).filter((one) => one * ROUNDED >= kw);
  const printed = Math.min(...powers);
  return rows.filter((row) => kwOf(row) === printed).flatMap(names);
}

function assigned(frames: readonly string[], stepOf: (frame: string) => number): Assigned | null {
  const steps = frames.map(stepOf).filter((step) => step >= 0);
  if (steps.length === 0) return null;
  return { least: Math.min(...steps), most: Math.max(...steps), frames: [...new Set(frames)] };
}

const numberOf = (frame: string) => Number(/^\d+/.exec(frame)?.[0]);
const inOrder = (numbers: readonly number[]) => [...new Set(numbers)].sort((a, b) => a - b);
const NUMBERS = inOrder(nemaOutputs.rows.map(({ frame }) => numberOf(frame[0])));
const HEIGHTS = inOrder(iecOutputs.rows.map(({ frame }) => numberOf(frame[0])));

const RPM_POLES_60_HZ = 7200;
/** A kW plate rounds its hp, and 3.7 kW is 5 hp. */
const ROUNDED = 1.02;
