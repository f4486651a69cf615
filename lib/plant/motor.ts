import { z } from 'zod';
import { classification } from './classification';
import { AUXILIARIES, KINDS, WINDINGS } from './motor-words';
import { rating } from './rating';
import { day, fromZeroTo, group, oneOf, text, told, upTo } from './told';

const measured = {
  shaftHeightMm: upTo(1_000),
  holesAcrossMm: upTo(2_000),
  holesAlongMm: upTo(2_000),
  holeMm: upTo(100),
  holeToShoulderMm: upTo(1_000),
  shaftDiameterMm: upTo(300),
  shaftLengthMm: upTo(600),
  keyWidthMm: upTo(100),
  pitchCircleMm: upTo(2_000),
  spigotMm: upTo(2_000),
  faceDiameterMm: upTo(2_500),
};

/** One physical motor as its plate, the tape and the store tell it. Null is "not known", everywhere. */
export const motor = z.strictObject({
  id: text(60),
  kind: oneOf(KINDS),
  frame: told(text(40)),
  mounting: told(text(40)),
  phases: told(z.literal([1, 3])),
  poles: told(z.number().int().min(2).max(64).multipleOf(2)),
  leads: told(z.number().int().min(2).max(24)),
  winding: oneOf(WINDINGS),
  ratings: z
    .array(rating)
    .max(24)
    .nullish()
    .transform((rows) => rows ?? []),
  serviceFactor: told(z.number().min(1).max(2)),
  design: oneOf(['A', 'B', 'C', 'D', 'E', 'N', 'NE', 'NY', 'NEY', 'H', 'HE', 'HY', 'HEY']),
  codeLetter: oneOf(['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'N', 'P', 'R', 'S', 'T', 'U', 'V']),
  /** Per cent of full-load torque. */
  lockedRotorPct: upTo(600),
  /** Per cent of full-load torque. */
  breakdownPct: upTo(800),
  enclosure: told(text(20)),
  ip: told(z.string().regex(/^IP[0-6X][0-9X]K?$/, 'IP and two digits, such as IP55; X where the plate shows none')),
  insulation: oneOf(['A', 'E', 'B', 'F', 'H', 'N', 'R']),
  ambientC: told(z.number().min(-60).max(120)),
  duty: told(z.string().regex(/^S([1-9]|10)$/, 'a duty type S1 to S10')),
  driveDuty: oneOf(['none', 'general', 'inverter']),
  /** x of a declared constant-torque speed range x:1. */
  constantTorqueRange: told(z.number().min(1).max(10_000)),
  maxRpm: upTo(30_000),
  terminalBox: oneOf(['left', 'right', 'top']),
  rotation: oneOf(['cw', 'ccw', 'either']),
  washdown: oneOf(['none', 'painted', 'stainless']),
  /** Null: no mark is known. */
  classification: told(classification),
  has: told(z.array(z.enum(AUXILIARIES)).max(AUXILIARIES.length)),
  brake: group({ torqueNm: upTo(100_000), volts: upTo(1_000) }),
  massKg: upTo(50_000),
  lengthMm: upTo(10_000),
  measured: group(measured),
  spare: group({ shelvedOn: day(), testedOn: day(), insulationMohm: fromZeroTo(1_000_000) }),
});

export type Motor = z.output<typeof motor>;
/** A motor as the contract writes it: untold keys left out, hp or kW as stamped. */
export type MotorInput = z.input<typeof motor>;
