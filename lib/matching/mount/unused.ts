import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { type Compared, type Finding, note, ok, toRead } from '../finding';

/**
 * A face nobody uses is in nobody's way while its radius stays above the foot plane, or where the failed motor had one
 * as large. Null: there is none.
 */
export function unusedFace({ fit, failedFit }: Context, compared: Compared): Finding | null {
  if (fit.holding.face !== true) return null;
  const outside = fit.face === null ? null : fit.face.outsideMm;
  const height = fit.dimensions.shaftHeightMm.value;
  if (outside !== null && height !== null) {
    const overhang = outside / 2 - height;
    if (overhang <= DUST) return ok(compared, 'Held by its feet; its face stays above the foot plane.');
    const had =
      failedFit !== null && failedFit.holding.face !== false && failedFit.face !== null
        ? failedFit.face.outsideMm
        : null;
    if (had !== null && had >= outside)
      return note(
        compared,
        `Its face reaches ${figure(overhang)} mm below the feet, no lower than the failed motor’s did.`,
      );
    return toRead(
      compared,
      `Its face reaches ${figure(overhang)} mm below the feet: does it clear the base?`,
      `Measure at the base whether there is room for ${figure(overhang)} mm below the feet at the drive end`,
      5,
    );
  }
  if (failedFit !== null && failedFit.face !== null && failedFit.face.name === fit.face?.name)
    return note(compared, 'It has the face that the failed motor had: it is not used here.');
  return toRead(
    compared,
    'It has a face that is not used here, of unknown size: does it clear the base?',
    'Measure on this motor the outside diameter of the face and the height of the shaft above the feet',
    5,
  );
}

const DUST = 1e-9;

/** Feet nobody uses: where the failed motor had them they clear. Null: there are none. */
export function unusedFeet({ fit, failedFit }: Context, compared: Compared): Finding | null {
  if (fit.holding.feet === false) return null;
  if (fit.holding.feet === null)
    return fit.system === 'NEMA'
      ? note(
          compared,
          'The frame does not tell whether it has feet: if it has, they must unbolt or clear the pump or gear.',
        )
      : null;
  const height = fit.dimensions.shaftHeightMm.value;
  const had = failedFit !== null && failedFit.holding.feet === true ? failedFit.dimensions.shaftHeightMm.value : null;
  if (height !== null && had !== null && height <= had + DUST)
    return note(compared, 'Its feet are not used here; the failed motor had feet as large, so they clear.');
  return toRead(
    compared,
    'It has feet that are not used here.',
    'Look on this motor whether the feet unbolt, and at the set whether they would clear the pump or gear and the floor',
    5,
  );
}
