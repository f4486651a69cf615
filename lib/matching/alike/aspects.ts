import { breakaway } from '../criteria/load/breakaway';
import { duty } from '../criteria/load/duty';
import { power } from '../criteria/load/power';
import { speed } from '../criteria/load/speed';
import { temperatureAltitude } from '../criteria/load/temperature-altitude';
import { torque } from '../criteria/load/torque';
import { envelope } from '../criteria/mount/envelope';
import { face } from '../criteria/mount/face';
import { footHoles } from '../criteria/mount/foot-holes';
import { key } from '../criteria/mount/key';
import { lift } from '../criteria/mount/lift';
import { mounting } from '../criteria/mount/mounting';
import { shaftDiameter } from '../criteria/mount/shaft-diameter';
import { shaftHeight } from '../criteria/mount/shaft-height';
import { shaftLength } from '../criteria/mount/shaft-length';
import { shaftPosition } from '../criteria/mount/shaft-position';
import { terminalBox } from '../criteria/mount/terminal-box';
import { driveSuitability } from '../criteria/supply/drive-suitability';
import { frequency } from '../criteria/supply/frequency';
import { fullLoadCurrent } from '../criteria/supply/full-load-current';
import { phases } from '../criteria/supply/phases';
import { starting } from '../criteria/supply/starting';
import { voltage } from '../criteria/supply/voltage';
import { areaClassification } from '../criteria/surroundings/area-classification';
import { auxiliaries } from '../criteria/surroundings/auxiliaries';
import { bearings } from '../criteria/surroundings/bearings';
import { enclosure } from '../criteria/surroundings/enclosure';
import { rotation } from '../criteria/surroundings/rotation';
import { washdown } from '../criteria/surroundings/washdown';
import type { CriterionId } from '../finding';
import type { Aspect } from './aspect';

/** Never worse than a note, and never work: a verdict rests on neither. */
export const WITHOUT_WEIGHT: readonly CriterionId[] = ['loading', 'efficiency-class'];

/** Where a rating row comes from, of the set. */
const SUPPLY_OF_SET = [
  'supply.phases',
  'supply.volts',
  'supply.hertz',
  'supply.measuredVolts',
  'supply.unbalancePct',
  'supply.start',
  'supply.drive.outputVolts',
  'supply.drive.baseHertz',
];

/** All of a plate that anything electrical is judged by, the rating row included. */
const ELECTRICAL = [
  ...['kind', 'phases', 'poles', 'leads', 'winding', 'ratings', 'serviceFactor', 'design', 'codeLetter'],
  ...['lockedRotorPct', 'breakdownPct', 'enclosure', 'ip', 'ambientC', 'driveDuty', 'constantTorqueRange', 'maxRpm'],
];
const ofFailed = (paths: readonly string[]) => paths.map((path) => `failed.${path}`);

const FIT_OUT_OF_MOTOR = ['ip', 'enclosure', 'has', 'brake', 'washdown', 'kind', 'rotation', 'duty', 'mounting'];

/** What is judged first drops most for least: what the screen drops by needs the first two. */
export const supplied: Aspect = {
  id: 'supply',
  criteria: [phases, voltage, frequency],
  ofSet: SUPPLY_OF_SET,
  ofMotor: ELECTRICAL,
  isByFit: false,
};

export const fittedOut: Aspect = {
  id: 'fit-out',
  criteria: [enclosure, washdown, auxiliaries, rotation, duty],
  ofSet: [
    ...['surroundings.ip', 'surroundings.washdown', 'shaftDirection', 'rotation', 'needs', 'supply.start'],
    ...ofFailed(FIT_OUT_OF_MOTOR),
  ],
  ofMotor: FIT_OUT_OF_MOTOR,
  isByFit: false,
};

/** What is judged of those that the screen leaves. */
export const aspects: readonly Aspect[] = [
  {
    id: 'mount',
    criteria: [
      ...[mounting, shaftHeight, footHoles, shaftPosition, shaftDiameter, shaftLength, key, face],
      ...[terminalBox, envelope, lift],
    ],
    ofSet: [
      ...['mounting', 'shaftDirection', 'seat', 'base'],
      ...['coupling.type', 'coupling.input', 'coupling.hub', 'coupling.quill', 'coupling.takeUpMm'],
      ...['coupling.gapMm', 'coupling.gapMinMm', 'coupling.gapMaxMm', 'coupling.sheave.changeable'],
    ],
    ofMotor: ['terminalBox', 'lengthMm', 'massKg'],
    isByFit: true,
  },
  {
    id: 'bearings',
    criteria: [bearings],
    ofSet: ['coupling.type', 'coupling.sheave'],
    ofMotor: ['kind', 'ratings'], // where a plate tells no poles, its rows do
    isByFit: true,
  },
  {
    id: 'heat',
    criteria: [temperatureAltitude],
    ofSet: ['supply.start', 'supply.unbalancePct', 'surroundings.altitudeM', 'surroundings.ambientC'],
    ofMotor: ['ambientC'],
    isByFit: false,
  },
  {
    id: 'classification',
    criteria: [areaClassification],
    ofSet: [...SUPPLY_OF_SET, 'surroundings.classification', 'failed.classification'],
    ofMotor: [...ELECTRICAL, 'classification', 'has'],
    isByFit: false,
  },
  {
    id: 'starting',
    criteria: [starting, driveSuitability],
    ofSet: ['supply', 'load.kind', ...ofFailed(ELECTRICAL)],
    ofMotor: ELECTRICAL,
    isByFit: false,
  },
  {
    id: 'load',
    criteria: [fullLoadCurrent, power, torque, speed, breakaway],
    ofSet: 'all',
    ofMotor: ELECTRICAL,
    isByFit: false,
  },
];
