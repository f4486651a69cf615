import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Face } from '@/lib/standards/dimension';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { block, type Compared, type Finding, note, ok, toRead } from '../../finding';
import { faceMisfit, familyOf, figuresOf } from '../../mount/face-misfit';

/**
 * Does the face bolt on: pitch circle, spigot, holes (tapped or through), outside diameter? Not asked of a motor held
 * by its feet alone.
 */
export function face(_: PumpSet, __: Motor, { seat, fit }: Context): Finding | null {
  if (!seat.needsFace) return null;

  const have = fit.face;
  const need = seat.face;
  const compared: Compared = {
    criterion: 'face',
    have: have === null ? null : have.name,
    need: need === null ? seat.faceTold : need.name,
    cite: citeOf(have, need),
  };
  if (fit.holding.face === false) return block(compared, 'It has no face.');
  if (need === null) return unknownNeed(seat.faceTold, compared);
  if (have === null)
    return toRead(
      compared,
      'Which face it has is unknown.',
      'Measure bolt circle, spigot, holes and outside diameter of this face',
      10,
    );
  // Kinds are judged before figures: free holes take bolts from the motor's side, tapped ones from the other.
  if (familyOf(have.kind) !== familyOf(need.kind))
    return block(compared, `${figuresOf(have)} in place of ${figuresOf(need)}: these are faces of different kinds.`);
  return ofFigures(have, need, compared);
}

function ofFigures(have: Face, need: Face, compared: Compared): Finding {
  const misfit = faceMisfit(have, need);
  switch (misfit) {
    case 'same':
      return ok(compared, `The face is the same: ${figuresOf(have)}.`);
    case 'smaller':
      return note(
        compared,
        `Bolts and spigot are the same; the face is smaller outside: ${outsideOf(have)} where ${outsideOf(need)}.`,
      );
    case 'larger':
      return toRead(
        compared,
        `Bolts and spigot are the same; the face is larger outside: ${outsideOf(have)} where ${outsideOf(need)}.`,
        'Measure whether there is room round the face',
        5,
      );
    case 'unknown':
      return toRead(
        compared,
        `The figures of ${have.pitchCircleMm === null || have.spigotMm === null ? 'its face' : 'the face needed'} are unknown.`,
        'Measure bolt circle, spigot and holes, here and at the set',
        10,
      );
    default:
      return block(compared, `${WHY[misfit]}: ${figuresOf(have)} in place of ${figuresOf(need)}.`);
  }
}

const outsideOf = ({ name, outsideMm }: Face) =>
  `${name} has ${outsideMm === null ? 'an unknown one' : `${figure(outsideMm)} mm`}`;

const WHY = {
  'pitch-circle': 'Another bolt circle',
  spigot: 'Another spigot',
  holes: 'Other holes',
} as const;

function unknownNeed(told: string | null, compared: Compared): Finding {
  return told === null
    ? toRead(
        compared,
        'Which face the pump or gear offers is unknown.',
        'Measure bolt circle, spigot and holes at the pump or gear',
        10,
      )
    : toRead(
        compared,
        `The face told for this set, "${told}", is no face known here: write one such as FF165, FT130 or 182TC.`,
        'Measure bolt circle, spigot and holes at the pump or gear',
        10,
      );
}

function citeOf(have: Face | null, need: Face | null): string {
  if (have === null) return need === null ? 'common practice, no source' : need.cite;
  return need === null || need.cite === have.cite ? have.cite : `${have.cite}; ${need.cite}`;
}
