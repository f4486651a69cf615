import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { type Compared, type Finding, note, ok, toJudge, toRead } from '../finding';

/** Does the winding stand the drive's voltage peaks? By declared duty; else by voltage, filter and cable. */
export function insulationOnDrive(
  set: PumpSet,
  candidate: Motor,
  { row }: Context,
  isSamePlate: boolean,
  compared: Compared,
): Finding {
  const have = candidate.driveDuty;
  const drive = set.supply.drive;
  const had = set.failed?.driveDuty ?? null;
  const cableM = drive?.cableM ?? null;
  const hasFilter = drive?.filter === true;
  if (have === 'inverter') return ok({ ...compared, cite: PART_31 }, 'Declared for duty on a drive.');
  if (had !== null && RANK[had] > RANK[have ?? 'none']) {
    const says = `The failed motor was declared for ${had === 'inverter' ? 'inverter duty' : 'use on a drive'}; this one is not.`;
    const about = { ...compared, need: had, cite: PART_31 };
    return have === null ? toRead(about, says, READ_DUTY, 5) : toJudge(about, says);
  }
  if (row.volts !== null && row.volts <= LOW_VOLTS)
    return have === 'general'
      ? ok({ ...compared, cite: PART_30 }, 'Declared for use on a drive.')
      : note(
          { ...compared, cite: PART_30 },
          'Not declared for a drive; up to 250 V its peaks stay within a usual winding.',
        );
  const peaks = peaksAt(row.volts);
  if (have === 'general') return ofGeneral(row.volts, cableM, hasFilter, peaks, compared);
  return ofUndeclared(have, row.volts, cableM, hasFilter, isSamePlate && had === have, peaks, compared);
}

const PART_30 = 'NEMA MG 1 Part 30: 1000 V peak (read in one text)';
const PART_31 = 'NEMA MG 1 Part 31: 3.1 × rated volts peak (read in one text)';
const READ_DUTY = 'Look for inverter duty on the plate or in the maker’s sheet';
const RANK = { none: 0, general: 1, inverter: 2 } as const;
/** Twice the DC link of a 250 V system stays under the 1000 V of Part 30. */
const LOW_VOLTS = 250;
/** Above the 480 V class peaks reach about 2100 V (575 V, read in one text). */
const MIDDLE_VOLTS = 500;
/** Peaks matter most beyond 100 ft of cable (read in one text). */
const SHORT_CABLE_M = 30;

/** The steepest reflected peak doubles the DC link: 2 × √2 × volts. */
const peaksAt = (volts: number | null) =>
  volts === null
    ? 'the drive’s peaks at the winding are unknown'
    : `a drive on ${figure(volts, 0)} V can put peaks of ${figure(2 * Math.SQRT2 * volts, 0)} V on the winding`;

function ofGeneral(
  volts: number | null,
  cableM: number | null,
  hasFilter: boolean,
  peaks: string,
  compared: Compared,
): Finding {
  const about = { ...compared, cite: PART_30 };
  if (hasFilter) return ok(about, 'Declared for use on a drive, and there is a filter.');
  const isLong = cableM !== null && cableM > SHORT_CABLE_M;
  if (volts === null || volts > MIDDLE_VOLTS || isLong)
    return toJudge(
      about,
      `Declared for general use on a drive, made for 1000 V; ${peaks}${isLong ? `, with ${figure(cableM, 0)} m of cable` : ''}.`,
    );
  return cableM === null
    ? note(about, `Declared for use on a drive; ${peaks} where the cable is longer than ${SHORT_CABLE_M} m.`)
    : ok(about, `Declared for use on a drive, on ${figure(cableM, 0)} m of cable.`);
}

function ofUndeclared(
  have: Motor['driveDuty'],
  volts: number | null,
  cableM: number | null,
  hasFilter: boolean,
  isAsBefore: boolean,
  peaks: string,
  compared: Compared,
): Finding {
  const about = { ...compared, cite: PART_30 };
  if (hasFilter && volts !== null)
    return note(about, 'Not declared for a drive, but the filter takes its voltage peaks.');
  const cable =
    cableM === null
      ? 'A filter or a short cable may clear it.'
      : cableM <= SHORT_CABLE_M
        ? `The cable is short (${figure(cableM, 0)} m), which may clear it.`
        : `With ${figure(cableM, 0)} m of cable it needs a filter.`;
  const before = isAsBefore ? ' The failed motor was not declared either: find out whether its winding broke.' : '';
  const says = `Not declared for a drive: ${peaks}, and a usual one stands 1000 V. ${cable}${before}`;
  return have === null ? toRead(about, says, READ_DUTY, 5) : toJudge(about, says);
}
