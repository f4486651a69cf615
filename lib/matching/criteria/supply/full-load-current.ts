import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { fullLoadCurrent as tableCurrent } from '@/lib/standards/full-load-current';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { block, type Compared, type Finding, needsWork, ok, toJudge, toRead } from '../../finding';
import { joined } from '../../joined';
import { PHASE_SHARE } from '../../starting/phase-share';
import { type Start, startOf } from '../../starting/start-of';

/**
 * Do overload, contactor, cable and drive carry the plate's full-load amps? In A in the line. Not asked when the set
 * states none of them.
 */
export function fullLoadCurrent(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { overloadMinA, overloadMaxA, contactorA, cableA, drive } = set.supply;
  const ratedA = set.supply.start === 'drive' ? (drive?.ratedA ?? null) : null;
  const need = ratedA ?? overloadMaxA ?? overloadMinA ?? contactorA ?? cableA;
  if (need === null) return null;

  const { point } = context;
  const have = context.row.amps;
  const compared: Compared = { criterion: 'full-load-current', have, need, unit: 'A', cite: CITE };
  if (have === null) return unknown(candidate, context, compared);
  let found: Finding | null = null;
  const start = startOf(set, candidate, context);
  if (overloadMinA !== null || overloadMaxA !== null) found = ofOverload(set, have, start, context, compared);
  if (contactorA !== null) found = joined(found, ofContactor(set, start, have, contactorA, compared));
  if (cableA !== null) found = joined(found, ofCable(have, cableA, compared));
  if (ratedA !== null) found = joined(found, ofDrive(have, (point.restored ?? point).amps, ratedA, compared));
  return found ?? ok(compared, `${figure(have)} A is within what the set states.`);
}

const CITE = 'NEC 430.6(A): overload by the plate (read in two texts)';
const CABLE_CITE = 'NEC 430.22: 125 % of full-load current (from memory)';
const COMMON = 'common practice, no source';
const CABLE_MARGIN = 1.25;
const DRIVE_MARGIN = 0.9;

function unknown(candidate: Motor, { row }: Context, compared: Compared): Finding {
  const isRowUnknown = candidate.ratings.length > 0 && (row.plate === null || row.plate.amps !== null);
  const says = isRowUnknown ? 'Which row of the plate holds here is unknown, and so its amps.' : 'Plate amps unknown.';
  const volts = row.plate?.volts ?? null;
  const kw = row.plate?.kw ?? null;
  const table = isRowUnknown || volts === null || kw === null ? null : tableCurrent(candidate.phases ?? 3, kw, volts);
  const about =
    table === null ? '' : ` A table for sizing circuits prints ${figure(table.amps)} A, never a plate: ${table.cite}.`;
  return row.volts === null
    ? toRead(
        compared,
        `${says}${about}`,
        'Measure the voltage between the lines at the starter, and read the amps at it on the plate',
        10,
      )
    : toRead(compared, `${says}${about}`, 'Read the amps at this voltage on the plate', 2);
}

type Dial = 'inside' | 'outside' | 'unknown';

function dialAt(amps: number, { supply }: PumpSet): Dial {
  const { overloadMinA: min, overloadMaxA: max } = supply;
  if ((max !== null && amps > max) || (min !== null && amps < min)) return 'outside';
  return min === null || max === null ? 'unknown' : 'inside';
}

/** The end of the dial that the setting is held against: its low end only where the setting is below it. */
const dialEnd = (amps: number, { supply: { overloadMinA: min, overloadMaxA: max } }: PumpSet): number | null =>
  min !== null && (max === null || amps < min) ? min : max;

function ofOverload(
  set: PumpSet,
  lineA: number,
  start: Start | null,
  { settings }: Context,
  compared: Compared,
): Finding {
  const { overloadIn } = set.supply;
  const phaseA = lineA * PHASE_SHARE;
  const hours = settings.hours.overload;
  if (start !== 'star-delta' || overloadIn === 'line') return ofDial(set, lineA, '', hours, compared);
  if (overloadIn === 'phase') return ofDial(set, phaseA, PHASE, hours, compared);
  const either = `${figure(lineA)} A if it is in the line, to ${figure(phaseA)} A if it is in the delta`;
  const found = toRead(
    { ...compared, need: dialEnd(lineA, set) },
    `Set the overload to ${either}: which is unknown.`,
    'Look in the starter whether the overload is in the line or in the delta',
    10,
  );
  // Wherever it stands its dial does not reach: the reading then only tells which one to fit.
  return dialAt(lineA, set) === 'outside' && dialAt(phaseA, set) === 'outside'
    ? { ...found, work: { id: 'overload', what: `Fit an overload and set it to ${either}`, hours } }
    : found;
}

const PHASE = ' in the delta (0.58 of the plate amps)';

function ofDial(set: PumpSet, amps: number, where: string, hours: number, line: Compared): Finding {
  const dial = dialAt(amps, set);
  const compared = { ...line, have: amps, need: dialEnd(amps, set) };
  const setting = `${figure(amps)} A${where}`;
  if (dial === 'inside') return ok(compared, `Set the overload to ${setting}: inside its dial.`);
  if (dial === 'unknown')
    return toRead(
      compared,
      `Set the overload to ${setting}: one end of its dial is unknown.`,
      'Read both ends of the overload dial',
      5,
    );
  return needsWork(compared, `${setting} is ${beyondDial(amps, set)}.`, {
    id: 'overload',
    what: `Fit an overload that takes ${setting} and set it so`,
    hours,
  });
}

function beyondDial(amps: number, { supply: { overloadMinA: min, overloadMaxA: max } }: PumpSet): string {
  if (min !== null && amps < min) return `below the overload dial’s ${figure(min)} A`;
  return max === null ? 'outside the overload dial' : `above the overload dial’s ${figure(max)} A`;
}

function ofContactor(
  { supply: { overloadIn } }: PumpSet,
  start: Start | null,
  have: number,
  contactorA: number,
  compared: Compared,
): Finding | null {
  if (have <= contactorA) return null;
  const about = { ...compared, need: contactorA, cite: COMMON };
  // In a star-delta starter the line and delta contactors stand in the legs and carry 0.58 of the line amps.
  if (start === 'star-delta' && have * PHASE_SHARE <= contactorA)
    return overloadIn === 'phase' // then the contactor it hangs on stands there as well
      ? null
      : toJudge(
          about,
          `${figure(have)} A is above the contactor’s ${figure(contactorA)} A unless it stands in the delta.`,
        );
  return block(about, `${figure(have)} A is above the contactor’s ${figure(contactorA)} A.`);
}

function ofCable(have: number, cableA: number, compared: Compared): Finding | null {
  const asked = have * CABLE_MARGIN;
  if (asked <= cableA) return null;
  return toJudge(
    { ...compared, have: asked, need: cableA, cite: CABLE_CITE },
    `The cable should carry 1.25 × ${figure(have)} A = ${figure(asked)} A; it carries ${figure(cableA)} A.`,
  );
}

function ofDrive(have: number, runningA: number | null, ratedA: number, compared: Compared): Finding {
  const about = { ...compared, need: ratedA, cite: COMMON };
  if (runningA !== null && runningA > ratedA)
    return block(
      { ...about, have: runningA },
      `It would run at ${figure(runningA)} A, above the drive’s ${figure(ratedA)} A.`,
    );
  if (have <= ratedA) return ok(about, `${figure(have)} A is within the drive’s ${figure(ratedA)} A.`);
  const above = `The plate’s ${figure(have)} A is above the drive’s ${figure(ratedA)} A`;
  if (runningA === null) return toJudge(about, `${above}, and what it would run at is unknown.`);
  return runningA <= ratedA * DRIVE_MARGIN
    ? toJudge(
        about,
        `${above}; it would run at ${figure(runningA)} A: set the drive’s current limit to ${figure(ratedA)} A.`,
      )
    : block(about, `${above}, and it would run at ${figure(runningA)} A: less than a tenth to spare.`);
}
