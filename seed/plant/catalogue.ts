import type { MotorInput } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { Dice } from './random';

/**
 * The demo's motors. Makers, speeds, efficiencies and masses are invented; frames follow the customary assignment
 * of ratings to frames (NEMA MG 1-13 for T frames, EN 50347 for IEC), so that the plant looks like a plant.
 */
export const MAKERS = ['Quillmoor', 'Haldengrave', 'Orrinshaw Electric', 'Tessaly Dynamo', 'Brackenholm'] as const;

export interface Size {
  power: number;
  poles: 2 | 4 | 6;
  frame: string;
  rpm: number;
  efficiencyPct: number;
  pf: number;
  massKg: number;
  lengthMm: number;
}

const size = (
  power: number,
  poles: 2 | 4 | 6,
  frame: string,
  rpm: number,
  efficiencyPct: number,
  pf: number,
  massKg: number,
  lengthMm: number,
): Size => ({ power, poles, frame, rpm, efficiencyPct, pf, massKg, lengthMm });

/** hp at 60 Hz, totally enclosed. */
export const NEMA: readonly Size[] = [
  size(1, 4, '143T', 1745, 85.5, 0.74, 19, 310),
  size(1.5, 4, '145T', 1745, 86.5, 0.76, 22, 325),
  size(2, 4, '145T', 1740, 86.5, 0.78, 24, 335),
  size(3, 4, '182T', 1760, 89.5, 0.79, 37, 375),
  size(5, 4, '184T', 1750, 89.5, 0.82, 43, 395),
  size(7.5, 4, '213T', 1765, 91.7, 0.81, 66, 450),
  size(10, 4, '215T', 1765, 91.7, 0.82, 77, 475),
  size(15, 4, '254T', 1770, 92.4, 0.82, 120, 570),
  size(20, 4, '256T', 1770, 93, 0.83, 140, 600),
  size(25, 4, '284T', 1775, 93.6, 0.84, 185, 680),
  size(30, 4, '286T', 1775, 93.6, 0.85, 205, 705),
  size(40, 4, '324T', 1780, 94.1, 0.85, 280, 770),
  size(3, 2, '182T', 3510, 86.5, 0.88, 36, 375),
  size(5, 2, '184T', 3500, 88.5, 0.89, 42, 395),
  size(7.5, 2, '213T', 3525, 89.5, 0.89, 63, 450),
  size(10, 2, '215T', 3520, 90.2, 0.9, 74, 475),
  size(15, 2, '254T', 3535, 91, 0.9, 115, 570),
  size(1, 6, '145T', 1155, 82.5, 0.66, 23, 325),
  size(2, 6, '184T', 1165, 88.5, 0.68, 42, 395),
  size(3, 6, '213T', 1170, 89.5, 0.7, 62, 450),
  size(5, 6, '215T', 1165, 89.5, 0.72, 74, 475),
  size(7.5, 6, '254T', 1175, 91, 0.74, 118, 570),
  size(10, 6, '256T', 1175, 91, 0.75, 138, 600),
];

/** kW; speed at 50 Hz. The imported lines carry plates for 50 and 60 Hz. */
export const IEC: readonly Size[] = [
  size(0.75, 4, '80', 1440, 82.5, 0.76, 13, 270),
  size(1.1, 4, '90S', 1445, 84.1, 0.77, 19, 300),
  size(1.5, 4, '90L', 1445, 85.3, 0.78, 22, 325),
  size(2.2, 4, '100L', 1455, 86.7, 0.8, 30, 365),
  size(3, 4, '100L', 1450, 87.7, 0.81, 34, 385),
  size(4, 4, '112M', 1455, 88.6, 0.81, 42, 400),
  size(5.5, 4, '132S', 1465, 89.6, 0.83, 62, 460),
  size(7.5, 4, '132M', 1465, 90.4, 0.84, 74, 500),
  size(11, 4, '160M', 1470, 91.4, 0.84, 118, 605),
  size(15, 4, '160L', 1470, 92.1, 0.85, 138, 650),
  size(3, 2, '100L', 2900, 87.1, 0.87, 32, 385),
  size(4, 2, '112M', 2920, 88.1, 0.88, 39, 400),
  size(5.5, 2, '132S', 2935, 89.2, 0.88, 58, 460),
  size(2.2, 6, '112M', 960, 84.3, 0.73, 40, 400),
  size(4, 6, '132M', 965, 86.8, 0.74, 66, 500),
];

/** The 1952 series, still turning in the oldest hall. hp at 60 Hz; efficiencies of their day. */
export const U_FRAME: readonly Size[] = [
  size(3, 4, '213', 1750, 81.5, 0.79, 70, 440),
  size(5, 4, '215', 1750, 84, 0.81, 80, 465),
  size(7.5, 4, '254U', 1755, 85.5, 0.82, 125, 560),
  size(10, 4, '256U', 1755, 86.5, 0.83, 145, 590),
];

type Row = Partial<Record<keyof Omit<Rating, 'connection'>, number | null>> & { connection?: Rating['connection'] };

const ampsOf = (kw: number, volts: number, efficiencyPct: number, pf: number, phases = 3) =>
  Math.round((1e6 * kw * 10) / ((phases === 3 ? Math.sqrt(3) : 1) * volts * pf * efficiencyPct)) / 100;

const stamped = (amps: number) => (amps < 10 ? Math.round(amps * 10) / 10 : Math.round(amps * 2) / 2);

/** A 230/460 V 60 Hz plate, nine leads. */
export function nemaPlate(s: Size): Pick<MotorInput, 'phases' | 'poles' | 'leads' | 'winding' | 'ratings'> {
  const row = (volts: number, connection: 'parallel-star' | 'series-star'): Row => ({
    volts,
    hertz: 60,
    hp: s.power,
    rpm: s.rpm,
    amps: stamped(ampsOf(s.power * 0.746, volts, s.efficiencyPct, s.pf)),
    pf: s.pf,
    efficiencyPct: s.efficiencyPct,
    connection,
  });
  return {
    phases: 3,
    poles: s.poles,
    leads: 9,
    winding: 'star-9',
    ratings: [row(230, 'parallel-star'), row(460, 'series-star')],
  };
}

/** A plate for 400 V 50 Hz and 460 V 60 Hz: above 3 kW in delta, below in star, as is the custom. */
export function iecPlate(
  s: Size,
  hertz: readonly (50 | 60)[],
): Pick<MotorInput, 'phases' | 'poles' | 'leads' | 'winding' | 'ratings'> {
  const isDelta = s.power > 3;
  const ratings: Row[] = [];
  for (const hz of hertz) {
    const rpm = hz === 50 ? s.rpm : (120 * 60) / s.poles - ((120 * 50) / s.poles - s.rpm);
    const volts = hz === 50 ? 400 : 460;
    const amps = (v: number) => stamped(ampsOf(s.power, v, s.efficiencyPct, s.pf));
    const both = { hertz: hz, kw: s.power, rpm, pf: s.pf, efficiencyPct: s.efficiencyPct };
    if (isDelta) {
      ratings.push({ ...both, volts, amps: amps(volts), connection: 'delta' });
      if (hz === 50) ratings.push({ ...both, volts: 690, amps: amps(690), connection: 'star' });
    } else {
      ratings.push({ ...both, volts, amps: amps(volts), connection: 'star' });
      if (hz === 50) ratings.push({ ...both, volts: 230, amps: amps(230), connection: 'delta' });
    }
  }
  return { phases: 3, poles: s.poles, leads: 6, winding: isDelta ? 'star-delta-6' : null, ratings };
}

/** Single phase, 115/230 V 60 Hz, for the corner that has nothing else. */
export function singlePhasePlate(hp: number, rpm: number): Pick<MotorInput, 'phases' | 'poles' | 'leads' | 'ratings'> {
  const row = (volts: number): Row => ({
    volts,
    hertz: 60,
    hp,
    rpm,
    amps: stamped(ampsOf(hp * 0.746, volts, 68, 0.7, 1)),
    pf: 0.7,
    efficiencyPct: 68,
  });
  return { phases: 1, poles: 4, leads: 4, ratings: [row(115), row(230)] };
}

export const serialOf = (maker: string, random: Dice) =>
  `${maker.slice(0, 2).toUpperCase()}${Math.floor(random.between(100_000, 999_999))}`;
