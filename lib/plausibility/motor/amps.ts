import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { doubtOfRows, type RowDoubt } from '../doubt-of-rows';

/**
 * Do amps, volts, power, efficiency and power factor agree? P = √3 · V · I · pf · η, single-phase without the √3. Without
 * efficiency or power factor their product may lie anywhere in what the size has. Not asked without amps, volts, power
 * or phases.
 */
export function amps(motor: Motor): Doubt | null {
  const { phases } = motor;
  if (phases === null) return null;
  return doubtOfRows('amps', motor, (row) => ofRow(row, phases, motor), { phases });
}

function ofRow(row: Rating, phases: 1 | 3, motor: Motor): RowDoubt | null {
  const { kw, pf, efficiencyPct } = row;
  const volts = voltsOf(row);
  if (row.amps === null || kw === null || volts === null) return null;

  const root = phases === 3 ? Math.sqrt(3) : 1;
  // A row for a range of volts has one current, which may belong to either end.
  const kva = { least: (root * volts.least * row.amps) / 1000, most: (root * volts.most * row.amps) / 1000 };
  const { least, most } = yields(row, motor);
  const slack = 1 + TOLERANCE + ROUNDED_A / row.amps;
  if (kva.least * least <= kw * slack && kva.most * most * slack >= kw) return null;

  const isMuch = kva.least * least > kw;
  const isWrong = isMuch ? kva.least * least > kw * BEYOND : kva.most * most * BEYOND < kw || kva.most < kw / slack;
  const V = volts.least === volts.most ? volts.least : isMuch ? volts.least : volts.most;
  const expected = (1000 * kw) / (root * V * (isMuch ? least : most));
  const known = pf !== null && efficiencyPct !== null;
  const product = `${phases === 3 ? '√3 × ' : ''}${figure(V)} V × ${figure(row.amps)} A`;
  const inKva = isMuch ? kva.least : kva.most;
  const power = row.hp === null ? `${figure(kw)} kW` : `${figure(row.hp)} hp = ${figure(kw)} kW`;
  const says = known
    ? `${product} × ${figure(pf)} × ${figure(efficiencyPct)} % = ${figure(inKva * least)} kW; the row says ${power}, which takes ${figure(expected, 1)} A.`
    : kva.most < kw / slack
      ? `${product} = ${figure(inKva)} kVA; the row says ${power}: more would come out than goes in.`
      : `${product} = ${figure(inKva)} kVA for ${power}: ${figure((kw / inKva) * 100)} % of it would become shaft power, where ${isMuch ? `${figure(least * 100)} % is little` : `${figure(most * 100)} % is much`} for the size.`;
  return {
    cell: 'amps',
    grade: isWrong ? 'wrong' : 'doubtful',
    have: row.amps,
    expected: Number(expected.toPrecision(3)),
    unit: 'A',
    says,
    cite: known ? IDENTITY : BY_SIZE,
    figures: figuresOf({ from: volts.least, to: volts.most, amps: row.amps, kw, pf, eff: efficiencyPct }),
  };
}

function voltsOf({ volts, voltsMin, voltsMax }: Rating): { least: number; most: number } | null {
  const least = voltsMin ?? volts ?? voltsMax;
  const most = voltsMax ?? volts ?? voltsMin;
  return least === null || most === null ? null : { least, most };
}

/** Efficiency × power factor: told, or between the least and the most that the size has. */
function yields({ kw, pf, efficiencyPct }: Rating, { kind, poles }: Motor): { least: number; most: number } {
  if (pf !== null && efficiencyPct !== null) {
    const told = (pf * efficiencyPct) / 100;
    return { least: told, most: told };
  }
  const size = SIZES.find(({ upToKw }) => (kw as number) <= upToKw) ?? LARGE;
  const inStep = kind === 'permanent-magnet' || kind === 'reluctance';
  // Many poles magnetise poorly.
  const least = (poles !== null && poles > 8) || kind === 'reluctance' ? size.least * 0.75 : size.least;
  const most = inStep ? IN_STEP : size.most;
  const told = pf ?? (efficiencyPct === null ? null : efficiencyPct / 100);
  return told === null
    ? { least, most }
    : { least: Math.max(least, told * LEAST_OTHER), most: Math.min(most, told * MOST_OTHER) };
}

/** Least and most efficiency × power factor at full load, by size; wide. */
const SIZES = [
  { upToKw: 0.4, least: 0.18, most: 0.8 },
  { upToKw: 3, least: 0.33, most: 0.86 },
  { upToKw: 37, least: 0.48, most: 0.91 },
];
const LARGE = { least: 0.6, most: 0.94 };
const IN_STEP = 0.97;
const LEAST_OTHER = 0.35;
const MOST_OTHER = 0.98;

/** Nominal efficiency and pairs of hp and kW, stamped to two figures, do not close better than this. */
const TOLERANCE = 0.1;
/** Beyond this a voltage, a decimal point or the unit of power is another one. */
const BEYOND = 1.35;
/** A plate prints tenths of an ampere, and rounds. */
const ROUNDED_A = 0.05;

const IDENTITY = 'P = √3 · V · I · pf · η, within 10 % (identity; the tolerance is common practice, no source)';
const BY_SIZE = 'efficiency × power factor by size (common practice, no source)';
