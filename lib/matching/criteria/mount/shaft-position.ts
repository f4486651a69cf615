import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { unknownDimension } from '@/lib/standards/dimension-of';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { holeToShaftEndMm } from '../../context/seat';
import { block, type Compared, type Finding, needsWork, note, ok, toJudge, toRead, type Work } from '../../finding';
import { citeOfBoth } from '../../mount/cite-of-both';
import { CARRIED_SHARE, isNotInPlace } from '../../mount/shaft-shift';

/**
 * Does the shaft end where the hub is? From the drive-end foot holes to the shaft end in mm; a difference above zero is
 * nearer the pump. Not asked where the place holds a motor by its face alone, nor of a motor that has no feet.
 */
export function shaftPosition(set: PumpSet, _: Motor, context: Context): Finding | null {
  const { base, seat, fit } = context;
  if (base.shift === 'not-asked' || fit.holding.feet === false) return null;

  const have = holeToShaftEndMm(fit);
  const need = seat.holeToShaftEnd.value;
  const { holeToShoulderMm: shoulder, shaftLengthMm } = fit.dimensions;
  const weaker = shoulder.value === null || shoulder.origin === 'standard' ? shoulder : shaftLengthMm;
  const compared: Compared = {
    criterion: 'shaft-position',
    have,
    need,
    unit: 'mm',
    cite: citeOfBoth(have === null ? UNKNOWN : weaker, seat.holeToShaftEnd, COMMON),
  };
  if (have === null || need === null) return unknown(have, compared);
  const mm = Math.abs(have - need);
  const ends = `Shaft ends ${figure(mm)} mm ${have > need ? 'nearer the pump' : 'further from the pump'}`;
  const { lengthMm } = set.coupling.hub;
  if (base.isTransition && isNotInPlace(base.shift))
    return needsWork(compared, `${ends}.`, transition(context.settings.hours['transition-base']));
  switch (base.shift) {
    case 'same':
      return ok(compared, mm === 0 ? 'The shaft ends in the same place.' : `${ends}: the play of the bolts takes it.`);
    case 'overhangs':
      return note(
        { ...compared, cite: CARRIED },
        `${ends}: the hub overhangs it and keeps ${figure(lengthMm === null ? LEAST_CARRIED_PCT : Math.floor((100 * (lengthMm - mm)) / lengthMm + DUST), 0)} % of its length on the shaft.`,
      );
    case 'slides-back':
      return note(
        compared,
        set.coupling.type === 'belt'
          ? `${ends}: set the sheave along the shaft until the belts run true.`
          : `${ends}: slide the hub back by that; the shaft end then stands in the gap and must clear the pump’s.`,
      );
    case 'gap':
      return note(compared, `${ends}: the coupling gap takes it. Set the gap anew.`);
    case 'no-hub':
      return toRead(
        compared,
        `${ends}; the length of the hub is unknown.`,
        'Measure at the set the hub along its bore',
        5,
      );
    case 'no-gap':
      return toRead(
        compared,
        `${ends}, over 3 mm; what the coupling gap can take is unknown.`,
        'Measure the coupling gap and the hub at the set, and read the least gap in the coupling maker’s sheet',
        15,
      );
    default:
      return out(set, mm, have < need, ends, context, compared);
  }
}

const COMMON = 'common practice, no source';
const CARRIED = '0.8 of the hub on the shaft: common practice, no source';
const UNKNOWN = unknownDimension();
const LEAST_CARRIED_PCT = CARRIED_SHARE * 100;
const DUST = 1e-9;

function unknown(have: number | null, compared: Compared): Finding {
  return have === null
    ? toRead(
        compared,
        'Where its shaft ends is unknown.',
        'Measure on this motor from the drive-end foot holes to the shaft end',
        5,
      )
    : toRead(
        compared,
        'Where the shaft should end is unknown.',
        'Measure at the set from the drive-end foot bolts to where the hub ended',
        10,
      );
}

/** Hub and gap do not take it up: a base, a spacer, or nothing. */
function out(
  { base, coupling }: PumpSet,
  mm: number,
  isFurther: boolean,
  ends: string,
  { settings, seat, base: { shift } }: Context,
  compared: Compared,
): Finding {
  const { hours } = settings;
  const says = `${ends}, more than hub and gap take up.`;
  if (isFurther && coupling.hub.replaceable !== false && seat.input === 'hub')
    return needsWork(compared, says, {
      id: 'spacer-coupling',
      what: `Fit a coupling with a spacer ${figure(mm)} mm longer`,
      hours: hours['spacer-coupling'],
    });
  if (base.slotting === true)
    return needsWork(compared, says, {
      id: 'move-base',
      what: `Drill the base to set the motor ${figure(mm)} mm ${isFurther ? 'nearer to' : 'further from'} the pump`,
      hours: hours['move-base'],
    });
  if (shift === 'meets')
    return toRead(
      compared,
      `${ends}: the hub can slide back by that, but the shaft end then stands out of it as far as the gap is wide.`,
      'Measure at the coupling how far the pump’s shaft end stands back in its hub',
      10,
    );
  if (isFurther || seat.input !== 'hub')
    return toJudge(compared, `${says} See whether a spacer or a moved base is possible.`);
  return block(compared, `${says} The coupling cannot be closed by that much.`);
}

const transition = (hours: number): Work => ({
  id: 'transition-base',
  what: 'Drill the transition base so that the shaft ends where the old one did',
  hours,
});
