import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { polesOfSpeed, synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { torqueNmOf } from '@/lib/units/torque';

/** One row of a plate with what follows from the plate alone; null is not known. */
export interface PlateRow {
  plate: Rating;
  /** The printed voltages; equal where one is printed. */
  lowVolts: number | null;
  highVolts: number | null;
  poles: number | null;
  slipRpm: number | null;
  fullLoadTorqueNm: number | null;
  /** How the winding is linked for this row: as printed, or by a √3 pair of voltages at one frequency. */
  link: 'star' | 'delta' | null;
  /** True where the other row of the √3 pair is on the plate too. */
  isPaired: boolean;
}

/** The rows of a motor's plate, worked out once for each motor. */
export function plateRows(motor: Motor): readonly PlateRow[] {
  const known = CACHE.get(motor);
  if (known !== undefined) return known;
  const rows = motor.ratings.map((plate) => rowOf(motor, plate));
  CACHE.set(motor, rows);
  return rows;
}

const CACHE = new WeakMap<Motor, readonly PlateRow[]>();

/** Runs in step with its supply: its speed is synchronous, whatever the plate rounds it to, and that is no unknown slip. */
export const isInStep = ({ kind }: Motor): boolean => kind === 'permanent-magnet' || kind === 'reluctance';

function rowOf(motor: Motor, plate: Rating): PlateRow {
  const poles = polesOf(motor, plate);
  const { rpm, kw, hertz } = plate;
  const synchronousRpm = poles === null || hertz === null ? null : synchronousSpeed(poles, hertz);
  const fullRpm = isInStep(motor) ? (synchronousRpm ?? rpm) : rpm;
  const slipRpm =
    synchronousRpm === null || fullRpm === null || fullRpm >= synchronousRpm ? null : synchronousRpm - fullRpm;
  const paired = pairedWith(motor, plate);
  return {
    plate,
    lowVolts: plate.voltsMin ?? plate.volts ?? plate.voltsMax,
    highVolts: plate.voltsMax ?? plate.volts ?? plate.voltsMin,
    poles,
    slipRpm,
    fullLoadTorqueNm: kw === null || fullRpm === null ? null : torqueNmOf(kw, fullRpm),
    link: linkOf(plate) ?? paired,
    isPaired: paired !== null,
  };
}

/** A two-speed motor's rows have their own poles, which only the speed tells. */
function polesOf(motor: Motor, { rpm, hertz }: Rating): number | null {
  const bySpeed = rpm === null || hertz === null ? null : polesOfSpeed(rpm, hertz);
  return motor.kind === 'two-speed' ? (bySpeed ?? motor.poles) : (motor.poles ?? bySpeed);
}

function linkOf({ connection }: Rating): PlateRow['link'] {
  if (connection === null) return null;
  return connection === 'star' || connection === 'series-star' || connection === 'parallel-star' ? 'star' : 'delta';
}

/** Which of a √3 pair this row is: the lower voltage is delta, the upper star. */
function pairedWith(motor: Motor, plate: Rating): PlateRow['link'] {
  const here = middleVolts(plate);
  if (here === null) return null;
  for (const other of motor.ratings) {
    const there = middleVolts(other);
    if (there === null || other.hertz !== plate.hertz) continue;
    if (isRoot3(there / here)) return 'delta';
    if (isRoot3(here / there)) return 'star';
  }
  return null;
}

const isRoot3 = (ratio: number) => Math.abs(ratio / Math.sqrt(3) - 1) <= ROUNDED;
/** Printed pairs are rounded: 230/400 is 1.739, 400/690 is 1.725, 380–420/660–725 in the middle 1.731. */
const ROUNDED = 0.03;

function middleVolts({ volts, voltsMin, voltsMax }: Rating): number | null {
  if (volts !== null) return volts;
  if (voltsMin !== null && voltsMax !== null) return (voltsMin + voltsMax) / 2;
  return voltsMin ?? voltsMax;
}
