import type { Criterion } from '../criterion';
import type { CriterionId } from '../finding';
import { breakaway } from './load/breakaway';
import { duty } from './load/duty';
import { efficiencyClass } from './load/efficiency-class';
import { loading } from './load/loading';
import { power } from './load/power';
import { speed } from './load/speed';
import { temperatureAltitude } from './load/temperature-altitude';
import { torque } from './load/torque';
import { envelope } from './mount/envelope';
import { face } from './mount/face';
import { footHoles } from './mount/foot-holes';
import { key } from './mount/key';
import { lift } from './mount/lift';
import { mounting } from './mount/mounting';
import { shaftDiameter } from './mount/shaft-diameter';
import { shaftHeight } from './mount/shaft-height';
import { shaftLength } from './mount/shaft-length';
import { shaftPosition } from './mount/shaft-position';
import { terminalBox } from './mount/terminal-box';
import { driveSuitability } from './supply/drive-suitability';
import { frequency } from './supply/frequency';
import { fullLoadCurrent } from './supply/full-load-current';
import { phases } from './supply/phases';
import { starting } from './supply/starting';
import { voltage } from './supply/voltage';
import { areaClassification } from './surroundings/area-classification';
import { auxiliaries } from './surroundings/auxiliaries';
import { bearings } from './surroundings/bearings';
import { enclosure } from './surroundings/enclosure';
import { rotation } from './surroundings/rotation';
import { washdown } from './surroundings/washdown';

/** Every question asked of a candidate, in the table's order. */
export const criteria: readonly (readonly [CriterionId, Criterion])[] = [
  ['mounting', mounting],
  ['shaft-height', shaftHeight],
  ['foot-holes', footHoles],
  ['shaft-position', shaftPosition],
  ['shaft-diameter', shaftDiameter],
  ['shaft-length', shaftLength],
  ['key', key],
  ['face', face],
  ['terminal-box', terminalBox],
  ['envelope', envelope],
  ['lift', lift],
  ['phases', phases],
  ['voltage', voltage],
  ['frequency', frequency],
  ['starting', starting],
  ['full-load-current', fullLoadCurrent],
  ['drive-suitability', driveSuitability],
  ['speed', speed],
  ['power', power],
  ['torque', torque],
  ['breakaway', breakaway],
  ['duty', duty],
  ['loading', loading],
  ['enclosure', enclosure],
  ['temperature-altitude', temperatureAltitude],
  ['area-classification', areaClassification],
  ['washdown', washdown],
  ['auxiliaries', auxiliaries],
  ['rotation', rotation],
  ['bearings', bearings],
  ['efficiency-class', efficiencyClass],
];
