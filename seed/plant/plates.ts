import type { MotorInput } from '@/lib/plant/motor';
import type { DemoArea, Line } from './areas';
import { IEC, iecPlate, NEMA, nemaPlate, type Size, singlePhasePlate, U_FRAME } from './catalogue';
import type { Dice } from './random';

export type Holding = 'foot' | 'face' | 'foot-and-face';

/** The plate of a motor of one line and size, dressed for the area it stands in. */
export function plateOf(
  line: Line,
  size: Size,
  holding: Holding,
  area: DemoArea,
  random: Dice,
): Omit<MotorInput, 'id'> {
  return { ...electrical(line, size), ...mounting(line, size, holding), ...dress(line, area, random), ...bulk(size) };
}

export function sizesOf(line: Line): readonly Size[] {
  if (line === 'nema') return NEMA;
  if (line === 'u-frame') return U_FRAME;
  if (line === 'single-phase') return NEMA.filter(({ power, poles }) => power <= 2 && poles === 4);
  return IEC;
}

/** kW of a catalogue size. */
export const kwOf = (line: Line, { power }: Size) => (line === 'iec-60' || line === 'skid-50' ? power : power * 0.7457);

/** Full-load speed at the line's hertz. */
export const rpmOf = (line: Line, { rpm, poles }: Size) =>
  line === 'iec-60' ? (120 * 60) / poles - ((120 * 50) / poles - rpm) : rpm;

function electrical(line: Line, size: Size): Omit<MotorInput, 'id'> {
  const cage = { kind: 'cage', duty: 'S1' } as const;
  switch (line) {
    case 'nema':
      return { ...cage, ...nemaPlate(size), serviceFactor: 1.15, design: 'B', codeLetter: codeLetterOf(size) };
    case 'u-frame':
      return { ...cage, ...nemaPlate(size), serviceFactor: 1, design: 'B', codeLetter: 'G' };
    case 'single-phase':
      return {
        kind: 'single-phase',
        duty: 'S1',
        ...singlePhasePlate(size.power, 1730),
        lockedRotorPct: 300,
        codeLetter: 'K',
      };
    case 'iec-60':
      return { ...cage, ...iecPlate(size, [50, 60]), design: 'N' };
    case 'skid-50':
      return { ...cage, ...iecPlate(size, [50]), design: 'N' };
  }
}

/** As a design B may have at most: NEMA MG 1-12.35 by NEC Table 430.7(B). */
const codeLetterOf = ({ power }: Size) => (power < 5 ? 'K' : power < 15 ? 'H' : 'G');

function mounting(line: Line, size: Size, holding: Holding): Pick<MotorInput, 'frame' | 'mounting'> {
  const isIec = line === 'iec-60' || line === 'skid-50';
  if (isIec)
    return { frame: size.frame, mounting: { foot: 'IM B3', face: 'IM B5', 'foot-and-face': 'IM B35' }[holding] };
  return { frame: holding === 'foot' ? size.frame : `${size.frame}C` };
}

function dress(line: Line, { surroundings, code }: DemoArea, random: Dice): Omit<MotorInput, 'id'> {
  const isOld = line === 'u-frame';
  return {
    enclosure: 'TEFC',
    ip: surroundings.ip ?? null,
    insulation: isOld ? 'B' : 'F',
    ambientC: Math.max(surroundings.ambientC ?? 40, 40),
    driveDuty: 'none',
    terminalBox: line === 'iec-60' || line === 'skid-50' ? 'top' : 'left',
    rotation: 'either',
    washdown: surroundings.washdown ? (random.chance(0.4) ? 'stainless' : 'painted') : 'none',
    classification: code === 'BG' ? (surroundings.classification ?? null) : null,
    has: line === 'iec-60' || line === 'skid-50' ? ['thermistor'] : [],
  };
}

const bulk = ({ massKg, lengthMm }: Size) => ({ massKg, lengthMm });
