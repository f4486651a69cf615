import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Dimension } from '@/lib/standards/dimension';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { LEAST_PLATE_MM } from '../../context/base-change';
import { block, type Compared, type Finding, needsWork, ok, toRead } from '../../finding';
import { citeOfBoth } from '../../mount/cite-of-both';
import { nearest } from '../../mount/hole-misfit';

/**
 * Do the foot holes meet the bolts? Spacings across × along in mm. Every recorded hole pattern of the motor counts. Not
 * asked of a motor held by its face alone.
 */
export function footHoles(set: PumpSet, _: Motor, context: Context): Finding | null {
  const { base, seat, fit } = context;
  if (base.holes === 'not-asked') return null;

  const { holesAcrossMm: across, holesAlongMm: along, footHoleMm: hole } = fit.dimensions;
  const compared: Compared = {
    criterion: 'foot-holes',
    have: patternOf(fit, across, along),
    need: patternOf(seat, seat.holesAcross, seat.holesAlong),
    unit: 'mm',
    cite: `${citeOfBoth(along, seat.holesAlong, COMMON)}${seat.bolt.cite === null ? '' : `; ${seat.bolt.cite}`}`,
  };
  if (fit.holding.feet === false) return block(compared, 'It has no feet to bolt down.');
  switch (base.holes) {
    case 'fits':
      return ok(compared, 'The foot holes take the bolts as they stand.');
    case 'either':
      return toRead(
        compared,
        'The failed motor had two hole patterns and this one fits only one of them.',
        'Measure at the base how far apart the bolts stand along the shaft',
        5,
      );
    case 'unknown':
      return ofSpacing(across.value === null || along.value === null, compared);
    case 'no-hole':
      return toRead(
        compared,
        'The size of its foot holes is unknown.',
        'Measure how wide the foot holes of this motor are',
        2,
      );
    case 'no-bolt':
      return toRead(
        compared,
        'The size of the foot bolts is unknown.',
        'Measure at the base how thick the foot bolts are',
        5,
      );
    case 'misfit':
      return misfit(set, context, hole, compared);
  }
}

const COMMON = 'common practice, no source';

/** Kept for each mounting and seat: the same few are written for every pair. */
const kept = new WeakMap<object, string | null>();

function patternOf(of: object, across: Dimension, along: Dimension): string | null {
  const known = kept.get(of);
  if (known !== undefined) return known;
  const pattern = patternIn(across, along);
  kept.set(of, pattern);
  return pattern;
}

function patternIn({ value: across }: Dimension, { value, alternatives }: Dimension): string | null {
  if (across === null || value === null) return null;
  let along = figure(value);
  for (const other of alternatives) along += ` or ${figure(other)}`;
  return `${figure(across)} × ${along}`;
}

function ofSpacing(isCandidate: boolean, compared: Compared): Finding {
  return isCandidate
    ? toRead(
        compared,
        'Its foot-hole spacing is unknown.',
        'Measure this motor’s foot holes: how far apart across and along the shaft, and how wide',
        5,
      )
    : toRead(
        compared,
        'The bolt spacing at the base is unknown.',
        'Measure at the base the bolts: how far apart across and along the shaft, and how thick',
        5,
      );
}

function misfit(set: PumpSet, { base, seat, fit, settings }: Context, hole: Dimension, compared: Compared): Finding {
  const says = `${misfitOf(fit.dimensions, seat, hole)}: first look for a second set of holes in the base or the feet.`;
  if (base.isTransition)
    return needsWork(compared, says, {
      id: 'transition-base',
      what: 'Make a transition base with holes for the old bolts and for this motor',
      hours: settings.hours['transition-base'],
    });
  if (set.base.slotting === true)
    return needsWork(compared, says, {
      id: 'slot-or-redrill',
      what: 'Slot or redrill the base for this motor’s foot holes',
      hours: settings.hours['slot-or-redrill'],
    });
  const { stackMm } = base;
  return block(compared, set.base.transitionBase === true && stackMm !== null ? `${says} ${tooLow(stackMm)}` : says);
}

function tooLow(stackMm: number): string {
  const room = figure(stackMm);
  return stackMm <= 0 || room === '0'
    ? `There is no height under its feet for a transition base, which takes at least ${LEAST_PLATE_MM} mm.`
    : `The height of ${room} mm under its feet is too little for a transition base, which takes at least ${LEAST_PLATE_MM} mm.`;
}

function misfitOf(
  { holesAcrossMm, holesAlongMm }: Context['fit']['dimensions'],
  seat: Context['seat'],
  hole: Dimension,
) {
  const across = nearest(holesAcrossMm, seat.holesAcross.value) / 2;
  let along = nearest(holesAlongMm, seat.holesAlong.value) / 2;
  for (const other of seat.holesAlong.alternatives) along = Math.min(along, nearest(holesAlongMm, other) / 2);
  const off = `Each hole is off its bolt by ${offBy(across, along)}`;
  const bolt = seat.bolt.value;
  if (hole.value === null || bolt === null || hole.value >= bolt) return off;
  const thin = `bolts of ${figure(bolt, 1)} mm do not go through holes of ${figure(hole.value, 1)} mm`;
  return across + along > 0 ? `${off}, and ${thin}` : `B${thin.slice(1)}`;
}

/** Only the way in which a hole is off: "12.7 mm along", or both ways. */
function offBy(acrossMm: number, alongMm: number): string {
  const across = figure(acrossMm);
  const along = figure(alongMm);
  if (across === '0') return `${along} mm along`;
  return along === '0' ? `${across} mm across` : `${across} mm across and ${along} mm along`;
}
