import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { type FedBy, fedBy } from './fed-by';
import { isInStep, type PlateRow, plateRows } from './plate-rows';
import { reratedKw } from './rerated-kw';

/**
 * The candidate's rating at this supply. On a drive the supply is the drive's output (three-phase, outputVolts, baseHertz).
 * Powers in kW, speeds in rpm, torque in N·m. Null: not known.
 */
export interface RatingRow {
  /** The plate row it rests on; null when the plate has none that could serve. */
  plate: Rating | null;
  /** plated: a row at the supply's hertz. re-rated: moved from another hertz. none: no row at all, or hertz unknown. */
  kind: 'plated' | 're-rated' | 'none';
  /** Volts and hertz the motor would see. */
  volts: number | null;
  hertz: number | null;
  /** Flux ratio (V/f) over the plate's (Vn/fn); 1 on a drive up to its base frequency; null when any part is unknown. */
  phi: number | null;
  /** Greatest continuous power here before surroundings derate it. */
  kw: number | null;
  /** Synchronous speed at `hertz`. */
  synchronousRpm: number | null;
  /** Rated slip in rpm, from the plate's own row; null when the plate speed is unknown or synchronous or above. */
  slipRpm: number | null;
  /** Full-load speed here: synchronousRpm − slipRpm; the synchronous speed itself of a motor that runs in step. */
  rpm: number | null;
  /** T_fl: plate power at plate speed, before φ². */
  fullLoadTorqueNm: number | null;
  amps: number | null;
  /** 1 when unprinted, re-rated or on a drive. */
  serviceFactor: number;
  /** V/f over Vn/fn as the supply stands, on a drive too; null when any part is unknown. */
  fluxRatio: number | null;
  /** How the winding is linked for this row, as printed or by a √3 pair; null not known. */
  link: 'star' | 'delta' | null;
  /** True where the plate has the other row of the √3 pair. */
  isPaired: boolean;
}

export function ratingRowOf(set: PumpSet, candidate: Motor): RatingRow {
  const fed = fedBy(set);
  const rows = plateRows(candidate);
  const plated = bestAt(rows, fed, set.supply.start === 'star-delta', candidate.kind === 'two-speed');
  if (plated !== null) return platedRow(fed, candidate, plated);
  const moved = nearestFlux(rows, fed);
  return moved === null ? noRow(fed) : reratedRow(fed, candidate, moved);
}

/** A supply within 2 % of the plate's frequency is the plate's: IEC 60034-1 zone A (read in one text). */
export const SAME_HERTZ = 0.02;

/** Among rows at the supply's hertz the one whose volts fit best; a star-delta starter asks for the delta row. */
function bestAt(
  rows: readonly PlateRow[],
  { volts, hertz }: FedBy,
  isStarDelta: boolean,
  isTwoSpeed: boolean,
): PlateRow | null {
  if (hertz === null) return null;
  let best: PlateRow | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    const fn = row.plate.hertz;
    if (fn === null || Math.abs(hertz - fn) > fn * SAME_HERTZ) continue;
    let misfit = voltsMisfit(row, volts);
    // A star row at line voltage is no use to the starter, so a delta row that also fits goes first.
    if (isStarDelta && row.link === 'star') misfit += DELTA_FIRST;
    if (best === null || misfit < least || (isTwoSpeed && misfit === least && isFaster(row, best))) {
      best = row;
      least = misfit;
    }
  }
  return best;
}

/** A two-speed motor is judged at its high speed, in whatever order its plate lists them. */
const isFaster = (a: PlateRow, b: PlateRow): boolean =>
  a.plate.rpm !== null && (b.plate.rpm === null || a.plate.rpm > b.plate.rpm);

const DELTA_FIRST = 0.1;
const INSIDE_RANGE = 0.001;
const NO_VOLTS = 100;

/** Relative distance of the supply from the row's volts; inside a printed range only a tie-break. */
function voltsMisfit({ plate, lowVolts, highVolts }: PlateRow, volts: number | null): number {
  if (volts === null) return 0;
  if (lowVolts === null || highVolts === null) return NO_VOLTS;
  const nominal = plate.volts ?? (volts < lowVolts ? lowVolts : volts > highVolts ? highVolts : volts);
  const off = Math.abs(volts - nominal) / nominal;
  return volts >= lowVolts && volts <= highVolts ? off * INSIDE_RANGE : off;
}

/** Among rows at other frequencies the one whose flux is nearest to its own plate's. */
function nearestFlux(rows: readonly PlateRow[], fed: FedBy): PlateRow | null {
  if (fed.hertz === null) return null;
  let best: PlateRow | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    if (row.plate.hertz === null) continue;
    const flux = fluxRatioOf(row, fed);
    const off = flux === null ? NO_VOLTS : Math.abs(flux - 1);
    if (best === null || off < least) {
      best = row;
      least = off;
    }
  }
  return best;
}

/** φ = (V/f)/(Vn/fn). Where only a range is printed, Vn is its value nearest to the one that gives φ = 1. */
function fluxRatioOf({ plate, lowVolts, highVolts }: PlateRow, { volts, hertz }: FedBy): number | null {
  if (volts === null || hertz === null || plate.hertz === null || lowVolts === null || highVolts === null) return null;
  const asked = (volts * plate.hertz) / hertz;
  const nominal = plate.volts ?? Math.min(Math.max(asked, lowVolts), highVolts);
  return asked / nominal;
}

function platedRow(fed: FedBy, candidate: Motor, row: PlateRow): RatingRow {
  const { plate } = row;
  const fluxRatio = fluxRatioOf(row, fed);
  return {
    plate,
    kind: 'plated',
    phi: fed.isDriveFed ? 1 : fluxRatio,
    kw: plate.kw,
    serviceFactor: fed.isDriveFed ? 1 : (plate.serviceFactor ?? candidate.serviceFactor ?? 1), // unprinted is 1.0
    fluxRatio,
    ...speedsOf(fed, candidate, row),
  };
}

function reratedRow(fed: FedBy, candidate: Motor, row: PlateRow): RatingRow {
  const fluxRatio = fluxRatioOf(row, fed);
  // A drive holds the new plate's V/f up to the volts it has: it can fall short of it, never exceed it.
  const phi = fluxRatio !== null && fed.isDriveFed ? Math.min(1, fluxRatio) : fluxRatio;
  return {
    plate: row.plate,
    kind: 're-rated',
    phi,
    kw: reratedKw(candidate, row.plate, fed.hertz, phi),
    serviceFactor: 1,
    fluxRatio,
    ...speedsOf(fed, candidate, row),
  };
}

function speedsOf(fed: FedBy, candidate: Motor, row: PlateRow) {
  const { poles, slipRpm } = row;
  const synchronousRpm = poles === null || fed.hertz === null ? null : synchronousSpeed(poles, fed.hertz);
  const slip = slipRpm ?? (isInStep(candidate) ? 0 : null);
  return {
    volts: fed.volts,
    hertz: fed.hertz,
    synchronousRpm,
    slipRpm,
    // Far below its own frequency a motor's slip is more than its speed: it has no full-load speed there.
    rpm: synchronousRpm === null || slip === null || synchronousRpm <= slip ? null : synchronousRpm - slip,
    fullLoadTorqueNm: row.fullLoadTorqueNm,
    amps: fed.volts === null && !isOneCurrent(candidate) ? null : row.plate.amps,
    link: row.link,
    isPaired: row.isPaired,
  };
}

/** With the volts unknown every row might hold: then only amps that all of them print are known. */
function isOneCurrent({ ratings }: Motor): boolean {
  const [first] = ratings;
  for (const { amps } of ratings) if (amps !== first?.amps) return false;
  return true;
}

/** With the supply's or the plate's hertz unknown nothing may be worked out. */
function noRow({ volts, hertz }: FedBy): RatingRow {
  return {
    plate: null,
    kind: 'none',
    volts,
    hertz,
    phi: null,
    kw: null,
    synchronousRpm: null,
    slipRpm: null,
    rpm: null,
    fullLoadTorqueNm: null,
    amps: null,
    serviceFactor: 1,
    fluxRatio: null,
    link: null,
    isPaired: false,
  };
}
