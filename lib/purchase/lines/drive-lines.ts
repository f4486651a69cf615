import { fedBy } from '@/lib/matching/context/fed-by';
import type { Motor } from '@/lib/plant/motor';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import type { Line } from '../demand';
import { quantity } from '../quantity';

/** What a drive asks of it. */
export const DRIVE_LINES: readonly Line[] = [
  {
    ...{ id: 'drive', label: 'Duty on a drive', criterion: 'drive-suitability', of: 'asked' },
    isNothing: ({ driveDuty }) => driveDuty === null,
    // Where nobody told how it is started, nobody knows whether on a drive.
    value: ({ driveDuty, constantTorqueRange: range }, { supply }) =>
      driveDuty === null && supply.start === null ? null : driveText(driveDuty, range),
    why: (_, set) =>
      fedBy(set).isDriveFed ? 'winding and bearings suited to the drive and its cable' : 'as the failed motor had it',
  },
  {
    ...{ id: 'drive-speeds', label: 'Speed on the drive', criterion: 'torque', of: 'each' },
    isAsked: (_, set) => fedBy(set).isDriveFed,
    value: ({ poles }, { supply: { drive }, load }) => {
      if (drive?.minHertz == null || drive.maxHertz === null) return null;
      const speeds = poles === null ? '' : `, ${speedsText(poles, drive.minHertz, drive.maxHertz)}`;
      const kind = load.kind === null ? '' : `, ${LOAD[load.kind]}`;
      return `${figure(drive.minHertz)} to ${figure(drive.maxHertz)} Hz${speeds}${kind}`;
    },
    why: 'the range that the pump is run in',
  },
  {
    ...{ id: 'drive-cable', label: 'Cable from the drive', criterion: 'drive-suitability', of: 'each' },
    isAsked: (_, set) => fedBy(set).isDriveFed,
    value: (_, { supply: { drive } }) => {
      if (drive?.cableM == null) return null;
      const filter =
        drive.filter === null ? 'whether with a filter is not told' : drive.filter ? 'filter' : 'no filter';
      return `${figure(drive.cableM, 0)} m, ${filter}`;
    },
    why: 'the peaks at the winding grow with it: NEMA MG 1 Part 31 (read in one text)',
  },
  {
    ...{ id: 'max-rpm', label: 'Safe speed, at least', criterion: 'speed', of: 'asked' },
    isAsked: ({ maxRpm }) => maxRpm !== null,
    value: ({ maxRpm }) => quantity(maxRpm, 'rpm', 0),
    why: 'the drive goes above its base frequency',
  },
];

const LOAD = { 'constant-torque': 'constant torque', quadratic: 'torque with the square of speed' } as const;

function driveText(duty: Motor['driveDuty'], range: number | null): string {
  if (duty === null || duty === 'none') return 'none: it runs on the mains';
  if (duty === 'general') return 'declared for general use on a drive';
  return range === null
    ? 'inverter duty; the speed range is to be told'
    : `inverter duty, ${figure(range)} : 1 at constant torque`;
}

const speedsText = (poles: number, low: number, high: number) =>
  `${figure(synchronousSpeed(poles, low), 0)} to ${figure(synchronousSpeed(poles, high), 0)} rpm of the field`;
