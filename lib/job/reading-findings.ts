import { currentUnbalanceFinding } from './findings/current-unbalance';
import { insulationFinding } from './findings/insulation';
import { gapFinding, offsetFinding, softFootFinding } from './findings/line-up';
import { overloadFinding } from './findings/overload';
import { rotationFinding } from './findings/rotation';
import { runningCurrentFinding } from './findings/running-current';
import type { Predicted } from './predicted';
import type { ReadingFinding } from './reading-finding';
import type { Readings } from './readings';

/** What the readings say, in the order of the steps. Of what was not read nothing is said. */
export function readingFindings(readings: Readings, predicted: Predicted): ReadingFinding[] {
  const { insulationMohm, rotation, overloadA, softFootMm, offsetMm, gapMmPer100, amps } = readings;
  return [
    insulationMohm === null ? null : insulationFinding(insulationMohm, predicted),
    rotation === null ? null : rotationFinding(rotation),
    overloadA === null ? null : overloadFinding(overloadA, predicted),
    softFootMm === null ? null : softFootFinding(softFootMm),
    offsetMm === null ? null : offsetFinding(offsetMm, predicted),
    gapMmPer100 === null ? null : gapFinding(gapMmPer100, predicted),
    runningCurrentFinding(amps, predicted),
    predicted.phases === 1 ? null : currentUnbalanceFinding(amps),
  ].filter((one) => one !== null);
}
