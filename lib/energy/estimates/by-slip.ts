import { isInStep } from '@/lib/matching/context/plate-rows';
import { SAME_HERTZ } from '@/lib/matching/context/rating-row';
import { figure } from '@/lib/units/figure';
import { type LoadEstimate, type NotMade, notMade } from './estimate';
import type { ReadingCase } from './reading-case';

/** The slip at rated load may differ so much from the plate's: NEMA MG 1 12.46 (read in two texts). */
const SLIP_OFF = 0.2;

const CITES = {
  slip: 'load = slip over rated slip: a compressor library after the DOE load fact sheet (read in one text); rated slip ±20 %: NEMA MG 1 12.46 (read in two texts)',
  'slip-at-voltage':
    'the same with the square of the volts: load = slip / (rated slip × (Vn/V)²) (read in one text); rated slip ±20 %: NEMA MG 1 12.46 (read in two texts)',
} as const;

/**
 * A motor that carries its load slips less than this many times its rated slip: no breakdown torque asked of one is much
 * below twice its rated torque, and past it the motor stalls (NEMA MG 1 12.39, IEC 60034-12, from memory).
 */
const RUNS_BELOW = 2;

/** Slip read over rated slip. */
export const bySlip = (read: ReadingCase): LoadEstimate | NotMade => estimateOf('slip', read);

/** The same, with the slip brought to the plate's volts: a motor slips more at lower volts. */
export const bySlipAtVoltage = (read: ReadingCase): LoadEstimate | NotMade => estimateOf('slip-at-voltage', read);

function estimateOf(method: 'slip' | 'slip-at-voltage', read: ReadingCase): LoadEstimate | NotMade {
  const { measured, row, voltsRatio, isDriveFed, meanVolts } = read;
  const { rpm } = measured;
  if (rpm === null) return notMade(method, 'No speed was read.');
  if (isInStep(read.motor)) return notMade(method, 'It runs in step with its supply and has no slip.');
  if (isDriveFed && measured.hertz === null)
    return notMade(method, 'Fed by a drive: its frequency at that moment was not read.');
  if (isDriveFed && method === 'slip-at-voltage')
    return notMade(method, 'Fed by a drive: it sets the volts with the frequency.');
  if (row.kind !== 'plated' || row.slipRpm === null)
    return notMade(method, 'The plate does not tell the slip at this supply.');
  const { hertz } = measured;
  if (hertz !== null && !isDriveFed && row.hertz !== null && Math.abs(hertz / row.hertz - 1) > SAME_HERTZ)
    return notMade(method, `${figure(hertz, 1)} Hz were read, and the supply is told as ${figure(row.hertz, 1)} Hz.`);
  const synchronousRpm = fieldRpm(read);
  if (synchronousRpm === null) return notMade(method, 'Poles or hertz are not known.');
  const slip = synchronousRpm - rpm;
  if (slip <= 0)
    return notMade(
      method,
      `${figure(rpm, 0)} rpm is not below the synchronous ${figure(synchronousRpm, 1)}: read it again, and the hertz.`,
    );
  if (slip > RUNS_BELOW * row.slipRpm)
    return notMade(
      method,
      `${figure(slip, 0)} rpm of slip is over ${RUNS_BELOW} times the rated ${figure(row.slipRpm, 0)}: past what it can carry. It was starting or standing, or reading or plate is wrong.`,
    );
  const ratio = method === 'slip' ? 1 : voltsRatio;
  if (ratio === null || (method === 'slip-at-voltage' && meanVolts === null))
    return notMade(method, 'The volts at the motor were not read.');

  const rated = row.slipRpm;
  // A slip tells torque: on a drive power is that times the speed over the rated speed.
  const speedShare = isDriveFed && row.rpm !== null ? rpm / row.rpm : 1;
  const fieldShare = fieldLeft(read);
  const load = ((slip * ratio * ratio * fieldShare * fieldShare) / rated) * speedShare;
  return {
    made: true,
    method,
    loadPct: 100 * load,
    lowPct: (100 * load) / (1 + SLIP_OFF),
    highPct: (100 * load) / (1 - SLIP_OFF),
    arithmetic: arithmeticOf({ synchronousRpm, rpm, slip, rated, ratio: ratio * fieldShare, speedShare, load }),
    cite: CITES[method],
    caveats: caveatsOf(read, rated),
  };
}

/** By the row's own poles: a two-speed motor has others at each speed. */
function fieldRpm({ measured, row }: ReadingCase): number | null {
  if (row.synchronousRpm === null || row.hertz === null) return null;
  return (row.synchronousRpm * (measured.hertz ?? row.hertz)) / row.hertz;
}

/** Above base frequency a drive has no more volts: flux falls as base over frequency, torque for a slip with its square. */
function fieldLeft({ measured, row, isDriveFed }: ReadingCase): number {
  if (!isDriveFed || measured.hertz === null || row.hertz === null) return 1;
  return Math.min(1, row.hertz / measured.hertz);
}

interface Sum {
  synchronousRpm: number;
  rpm: number;
  slip: number;
  rated: number;
  /** Volts over the plate's, or flux above base frequency: by its square. */
  ratio: number;
  speedShare: number;
  load: number;
}

function arithmeticOf({ synchronousRpm, rpm, slip, rated, ratio, speedShare, load }: Sum): string {
  const at = ratio === 1 ? '' : ` × ${figure(ratio, 3)}²`;
  const share = speedShare === 1 ? '' : ` × ${figure(speedShare, 3)}`;
  return `(${figure(synchronousRpm, 1)} − ${figure(rpm, 1)}) rpm / ${figure(rated, 1)} rpm${at}${share} = ${figure(slip, 1)} / ${figure(rated, 1)}${at}${share} = ${figure(100 * load, 1)} %`;
}

function caveatsOf({ measured, row }: ReadingCase, rated: number): string[] {
  const caveats = [
    `One rpm is ${figure(100 / rated, 1)} % of load here; plates are often stamped to the next 5 rpm (from memory).`,
    'Slip grows with heat: read it when the motor is warm (from memory).',
  ];
  if (measured.hertz === null && row.synchronousRpm !== null && row.hertz !== null)
    caveats.push(
      `The hertz were not read: 0.05 Hz off is ${figure((100 * 0.05 * row.synchronousRpm) / (row.hertz * rated), 0)} % of load.`,
    );
  return caveats;
}
