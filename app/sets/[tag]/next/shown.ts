import { thousands } from '@/app/thousands';
import type { NextFailureRow } from '@/lib/energy/next-failure/next-failure';
import type { Range } from '@/lib/energy/range';
import type { WorkedOut } from '@/lib/energy/worked-out';

/** What stands in a cell whose figure is not known; why is told under the table. */
export const NOT_KNOWN = 'not known';

/** "1234", "1200 to 1300". */
export function rangeText(range: Range, digits = 0): string {
  if (range.low === null) return NOT_KNOWN;
  const [low, high] = [thousands(range.low, digits), thousands(range.high, digits)];
  return low === high ? low : `${low} to ${high}`;
}

/** The two ends of a figure worked out twice. */
export function endsText(low: WorkedOut, high: WorkedOut, digits = 0): string {
  if (low.value === null || high.value === null) return NOT_KNOWN;
  const [one, other] = [
    thousands(Math.min(low.value, high.value), digits),
    thousands(Math.max(low.value, high.value), digits),
  ];
  return one === other ? one : `${one} to ${other}`;
}

export const workedText = (worked: WorkedOut, digits = 0): string =>
  worked.value === null ? NOT_KNOWN : thousands(worked.value, digits);

/** Every reason, once, why a figure of these rows is not known. */
export function reasonsOf(rows: readonly NextFailureRow[]): string[] {
  const reasons = rows.flatMap((row) => [
    ...[row.ratedEfficiencyPct, row.kwhPerYear, row.moneyPerYear, row.hoursDown, row.moreShaftKw].flatMap((range) =>
      range.low === null ? [range.why] : [],
    ),
    ...[row.kwPerRpm, row.lifeCycle.low.total, row.lifeCycle.high.total].flatMap((one) =>
      one.value === null ? [one.why] : [],
    ),
  ]);
  return [...new Set(reasons)];
}

/** What the figures of these rows rest on, each once, by what they are figures of. */
export function sourcesOf(rows: readonly NextFailureRow[]): { what: string; from: string }[] {
  const of = (what: string, ranges: readonly Range[]) =>
    [...new Set(ranges.flatMap((range) => (range.low === null ? [] : [range.from])))].map((from) => ({ what, from }));
  return [
    ...of(
      'Hours down',
      rows.map(({ hoursDown }) => hoursDown),
    ),
    ...of(
      'Efficiency at full load',
      rows.map(({ ratedEfficiencyPct }) => ratedEfficiencyPct),
    ),
  ];
}
