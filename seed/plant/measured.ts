import type { MeasuredFigures } from '@/lib/energy/read-measured';

/** What somebody read at a running set. Days are counted back from today; what was not read is left out. */
export interface DemoMeasurement {
  daysAgo: number;
  set: string;
  volts?: readonly [number, number, number];
  amps: readonly [number, number, number];
  inputKw?: number;
  rpm?: number;
  hertz?: number;
  note: string | null;
}

/** Oldest first. All invented; the figures are such as the motors there would show, but for what the notes tell. */
export const MEASURED: readonly DemoMeasurement[] = [
  { daysAgo: 33, set: 'OR-104', amps: [10.6, 10.8, 10.5], inputKw: 6.4, rpm: 1180, note: null },
  { daysAgo: 26, set: 'SL-102', volts: [482, 480, 481], amps: [13.1, 13.3, 13.2], inputKw: 8.6, rpm: 1779, note: null },
  {
    ...{ daysAgo: 20, set: 'SK-106', volts: [481, 479, 483], amps: [25.9, 26.2, 25.6], inputKw: 9.6, rpm: 1794 },
    note: 'Runs at a third of what it could.',
  },
  { daysAgo: 15, set: 'SK-102', amps: [24.8, 25.1, 24.7], inputKw: 16.7, rpm: 1779, note: null },
  {
    ...{ daysAgo: 12, set: 'EF-106', volts: [473, 488, 454], amps: [9.7, 8.9, 6.8], inputKw: 5.4, rpm: 1768 },
    note: 'Hums. The new single-phase heaters hang on L1 and L3.',
  },
  { daysAgo: 8, set: 'CP-102', volts: [480, 482, 481], amps: [26, 26.4, 25.8], inputKw: 11.2, rpm: 1793, note: null },
  {
    ...{ daysAgo: 6, set: 'CP-107', amps: [24.2, 24, 24.3], inputKw: 13.1, rpm: 1542, hertz: 52 },
    note: 'Has run at 52 Hz all week.',
  },
  {
    ...{ daysAgo: 5, set: 'RF-106', volts: [478, 477, 480], amps: [21.4, 21, 21.2], inputKw: 14.4, rpm: 1763 },
    note: 'Tripped twice on hot afternoons.',
  },
  { daysAgo: 3, set: 'OR-104', amps: [11.7, 11.9, 11.6], inputKw: 7.1, rpm: 1178, note: 'More than a month ago.' },
];

/** With null for what was not read. */
export const figuresOf = ({ volts, amps, inputKw, rpm, hertz }: DemoMeasurement): MeasuredFigures => ({
  voltsL1L2: volts?.[0] ?? null,
  voltsL2L3: volts?.[1] ?? null,
  voltsL3L1: volts?.[2] ?? null,
  ampsL1: amps[0],
  ampsL2: amps[1],
  ampsL3: amps[2],
  inputKw: inputKw ?? null,
  powerFactor: null,
  rpm: rpm ?? null,
  hertz: hertz ?? null,
});
