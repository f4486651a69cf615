import { figure } from '@/lib/units/figure';
import type { EstimateMethod, LoadEstimate } from './estimates/estimate';
import type { ReadingCase } from './estimates/reading-case';

/** Two readings that cannot both be right. */
export interface Contradiction {
  between: readonly [string, string];
  says: string;
}

/** What each way rests on: two ways from one reading cannot contradict each other. */
const RESTS_ON: Record<EstimateMethod, string> = {
  'input-power': 'input power',
  output: 'input power',
  'line-current': 'line current',
  slip: 'slip',
  'slip-at-voltage': 'slip',
};

/** How far a read power and the product of volts, amps and power factor may lie apart: common practice, no source. */
const SAME_POWER = 0.05;

/** Readings no two of whose bands meet, each pair once; and a power read that its parts deny. */
export function contradictionsOf(estimates: readonly LoadEstimate[], read: ReadingCase): Contradiction[] {
  const readings = [...new Set(estimates.map(({ method }) => RESTS_ON[method]))];
  const of = (reading: string) => estimates.filter(({ method }) => RESTS_ON[method] === reading);
  const found = readings.flatMap((one, i) =>
    readings
      .slice(i + 1)
      .filter((other) => !of(one).some((a) => of(other).some((b) => isMeeting(a, b))))
      .map(
        (other): Contradiction => ({
          between: [one, other],
          says: `The readings contradict each other: by ${one} ${spanOf(of(one))}, by ${other} ${spanOf(of(other))}. A reading, or the figure of the plate it is held against, is wrong.`,
        }),
      ),
  );
  return [...found, ...deniedPower(read)];
}

const isMeeting = (a: LoadEstimate, b: LoadEstimate): boolean => a.lowPct <= b.highPct && b.lowPct <= a.highPct;

const spanOf = (estimates: readonly LoadEstimate[]): string =>
  `${figure(Math.min(...estimates.map(({ lowPct }) => lowPct)), 0)} to ${figure(Math.max(...estimates.map(({ highPct }) => highPct)), 0)} %`;

function deniedPower({ measured: { inputKw }, productKw }: ReadingCase): Contradiction[] {
  if (inputKw === null || productKw.value === null) return [];
  if (Math.abs(inputKw - productKw.value) <= SAME_POWER * Math.max(inputKw, productKw.value)) return [];
  return [
    {
      between: ['input power', 'volts, amps and power factor'],
      says: `The readings contradict each other: ${figure(inputKw, 2)} kW was read, and ${productKw.from}. One of the four is wrong.`,
    },
  ];
}
