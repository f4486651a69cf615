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
