import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Doubt, MOTOR_RULES, SET_RULES, SITE_RULES } from './doubt';
import { amps } from './motor/amps';
import { brakeTorque } from './motor/brake-torque';
import { codeLetter } from './motor/code-letter';
import { efficiency } from './motor/efficiency';
import { face } from './motor/face';
import { frameName } from './motor/frame-name';
import { frameSize } from './motor/frame-size';
import { mounting } from './motor/mounting';
import { phases } from './motor/phases';
import { powerOfRows } from './motor/power-of-rows';
import { serviceFactor } from './motor/service-factor';
import { speed } from './motor/speed';
import { torque } from './motor/torque';
import { couplingTorque } from './set/coupling-torque';
import { driveServiceFactor } from './set/drive-service-factor';
import { held } from './set/held';
import { hubBore } from './set/hub-bore';
import { load } from './set/load';
import { overload } from './set/overload';
import { pumpSpeed } from './set/pump-speed';
import { seatFace } from './set/seat-face';
import { supplyHertz } from './set/supply-hertz';
import { supplyPhases } from './set/supply-phases';
import { supplyVolts } from './set/supply-volts';
import { serial } from './site/serial';
import { twoPlaces } from './site/two-places';
import type { OfMotor, SiteMotor } from './site-motor';

type MotorRule = (motor: Motor) => Doubt | null;
export type SetRule = (set: PumpSet, motor: Motor | null) => Doubt | null;
type SiteRule = (all: readonly SiteMotor[]) => OfMotor[];

/** Every question asked of a motor's plate, in the table's order. */
export const motorRules: readonly (readonly [(typeof MOTOR_RULES)[number], MotorRule])[] = [
  ['speed', speed],
  ['amps', amps],
  ['power-of-rows', powerOfRows],
  ['efficiency', efficiency],
  ['code-letter', codeLetter],
  ['torque', torque],
  ['brake-torque', brakeTorque],
  ['service-factor', serviceFactor],
  ['phases', phases],
  ['frame-name', frameName],
  ['frame-size', frameSize],
  ['mounting', mounting],
  ['face', face],
];

/** Every question asked of a set with the motor in it. */
export const setRules: readonly (readonly [(typeof SET_RULES)[number], SetRule])[] = [
  ['held', held],
  ['seat-face', seatFace],
  ['hub-bore', hubBore],
  ['supply-phases', supplyPhases],
  ['supply-hertz', supplyHertz],
  ['supply-volts', supplyVolts],
  ['overload', overload],
  ['pump-speed', pumpSpeed],
  ['load', load],
  ['drive-service-factor', driveServiceFactor],
  ['coupling-torque', couplingTorque],
];

/** Every question asked of all motors of a site together. */
export const siteRules: readonly (readonly [(typeof SITE_RULES)[number], SiteRule])[] = [
  ['serial', serial],
  ['two-places', twoPlaces],
];
