import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import type { Line } from './areas';
import type { Size } from './catalogue';
import type { Dice } from './random';

const CONTACTORS_A = [9, 12, 18, 25, 32, 40, 50, 65, 80];
const CABLES_A = [15, 20, 28, 36, 50, 65, 85, 115];
const DRIVES_A = [3, 5, 8, 11, 14, 21, 27, 34, 40, 52, 65];

/**
 * The starter was chosen for the motor that stands there: dial around its amps, contactor and cable above. Star-delta
 * only where the load starts light: a third of the torque does not break a rotary pump away.
 */
export function supplyOf(
  random: Dice,
  line: Line,
  { power }: Size,
  plate: Omit<MotorInput, 'id'>,
  isDriven: boolean,
  startsLight: boolean,
): NonNullable<PumpSetInput['supply']> {
  const skid = line === 'skid-50';
  const phases = line === 'single-phase' ? 1 : 3;
  const volts = line === 'single-phase' ? 230 : skid ? 400 : 480;
  const hertz = skid ? 50 : 60;
  const row = plate.ratings?.find((r) => r.hertz === hertz && r.volts === (skid ? 400 : phases === 1 ? 230 : 460));
  const amps = row?.amps;
  if (!amps) throw new Error(`no amps on the plate of ${plate.frame}`);
  const isStarDelta = startsLight && plate.winding === 'star-delta-6' && !isDriven && power >= 5.5;
  const upTo = (figures: readonly number[], least: number) => figures.find((f) => f >= least) ?? least;
  const protection = {
    overloadMinA: Math.round(amps * (isStarDelta ? 0.58 : 1) * 8) / 10,
    overloadMaxA: Math.round(amps * (isStarDelta ? 0.58 : 1) * 12.5) / 10,
    overloadIn: isStarDelta ? 'phase' : 'line',
    contactorA: upTo(CONTACTORS_A, amps * 1.15),
    cableA: upTo(CABLES_A, amps * 1.25),
  } as const;
  if (!isDriven) return { phases, volts, hertz, start: isStarDelta ? 'star-delta' : 'direct', ...protection };
  return {
    phases,
    volts,
    hertz,
    start: 'drive',
    drive: {
      ratedA: upTo(DRIVES_A, amps * 1.1),
      overloadPct: 150,
      outputVolts: skid ? 400 : 460,
      baseHertz: hertz,
      minHertz: 20,
      maxHertz: hertz,
      cableM: Math.round(random.between(8, 60)),
      filter: random.chance(0.3),
    },
  };
}
