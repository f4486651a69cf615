import { operatingAmps } from '@/lib/matching/context/operating-amps';
import { figure } from '@/lib/units/figure';
import { type LoadEstimate, type NotMade, notMade } from './estimate';
import type { ReadingCase } from './reading-case';

/** The motor's amps at rated load may differ so much from the plate's: NEMA MG 1 12.47 (read in one text). */
const PLATE_AMPS_OFF = 0.1;
/** Below this reading a current says little: DOE load fact sheet by two texts. */
const POOR_BELOW = 0.5;
/** Where no power factor is known: a reading so low may come of any load below it. Published average at half load, 0.75 / 0.90. */
const ANY_LOAD_BELOW = 0.5 / (0.75 / 0.9);

const CITE =
  'load = I/In × V/Vn: a compressor library after the DOE load fact sheet (read in one text); plate amps ±10 %: NEMA MG 1 12.47 (read in one text); low end: the magnetising current taken out, fitted to two public data sheets';

/**
 * Line current over plate amps, corrected for volts. It reads high, the more so the lower the load, since the
 * magnetising current stays: the band goes down to the load that is left without it, or to nothing.
 */
export function byLineCurrent(read: ReadingCase): LoadEstimate | NotMade {
  const { meanAmps, meanVolts, row, voltsRatio, isDriveFed } = read;
  const method = 'line-current';
  if (isDriveFed) return notMade(method, 'Fed by a drive: volts and hertz at the motor are its own, and change.');
  if (meanAmps.value === null) return notMade(method, meanAmps.why);
  if (row.kind !== 'plated' || row.plate?.amps == null)
    return notMade(method, 'The plate’s amps at this supply are not known.');
  if (voltsRatio === null) return notMade(method, 'The volts at the motor were not read and are not told.');

  const plateA = row.plate.amps;
  const amps = meanAmps.value;
  const load = (amps / plateA) * voltsRatio;
  const volts = row.volts === null ? '' : ` × ${figure(row.volts, 1)} V / ${figure(row.volts / voltsRatio, 1)} V`;
  const caveats = [];
  if (load < POOR_BELOW) caveats.push('Below half load amps tell little: most of the current magnetises.');
  if (meanVolts === null) caveats.push('The volts were not read: those told of the supply stand in.');
  return {
    made: true,
    method,
    loadPct: 100 * load,
    lowPct: 100 * lowEnd(read, amps, load),
    highPct: (100 * load) / (1 - PLATE_AMPS_OFF),
    arithmetic: `${figure(amps, 2)} A / ${figure(plateA, 2)} A${volts} = ${figure(100 * load, 1)} %`,
    cite: CITE,
    caveats: [...caveats, ...read.caveats.ofAmps, ...read.caveats.ofRow],
  };
}

function lowEnd({ row, ratedPowerFactor }: ReadingCase, amps: number, load: number): number {
  const { plate } = row;
  if (plate === null || plate.kw === null || ratedPowerFactor.value === null)
    return load < ANY_LOAD_BELOW ? 0 : (load * (0.75 / 0.9)) / (1 + PLATE_AMPS_OFF);
  const withPf = { ...row, plate: { ...plate, pf: ratedPowerFactor.value } };
  const least = Math.min(
    load,
    loadAt((kw) => operatingAmps(withPf, kw, null), amps, plate.kw),
  );
  return least / (1 + PLATE_AMPS_OFF);
}

const HALVINGS = 60;
const MOST_LOAD = 3;

/** The load, per unit, at which the motor takes these amps; 0 where it takes more without any. */
function loadAt(ampsAt: (kw: number) => number | null, amps: number, ratedKw: number): number {
  let low = 0;
  let high = MOST_LOAD;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    const there = ampsAt(middle * ratedKw);
    if (there === null) return 0;
    if (there > amps) high = middle;
    else low = middle;
  }
  return low;
}
