import type { ReviewRuleId } from './finding';
import { derated } from './load/derated';
import { driveTorque } from './load/drive-torque';
import { overloaded } from './load/overloaded';
import { oversized } from './load/oversized';
import { serviceFactor } from './load/service-factor';
import { speed } from './load/speed';
import { trainTorque } from './load/train-torque';
import { mount } from './mount/mount';
import { spare } from './mount/spare';
import { classification } from './place/classification';
import { enclosure } from './place/enclosure';
import type { ReviewRule } from './rule';
import { currents } from './supply/currents';
import { driveDuty } from './supply/drive-duty';
import { protection } from './supply/protection';
import { singlePhase } from './supply/single-phase';
import { start } from './supply/start';
import { supply } from './supply/supply';

/** Every question of the review, in the table's order. */
export const reviewRules: readonly (readonly [ReviewRuleId, ReviewRule])[] = [
  ['overloaded', overloaded],
  ['service-factor', serviceFactor],
  ['derated', derated],
  ['oversized', oversized],
  ['speed', speed],
  ['drive-torque', driveTorque],
  ['train-torque', trainTorque],
  ['start', start],
  ['supply', supply],
  ['currents', currents],
  ['protection', protection],
  ['drive-duty', driveDuty],
  ['single-phase', singlePhase],
  ['enclosure', enclosure],
  ['classification', classification],
  ['mount', mount],
  ['spare', spare],
];
