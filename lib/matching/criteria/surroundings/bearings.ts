import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { hasMinimumSheave, type MinimumSheave, minimumSheave } from '@/lib/standards/minimum-sheave';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { plateRows } from '../../context/plate-rows';
import { block, type Finding, needsWork, note, ok, toJudge, toRead } from '../../finding';

/**
 * Do the drive-end bearing and shaft carry the belt's pull? NEMA sets a least sheave for each T frame and rating; for
 * other frames a shaft no thinner than the failed motor's stands in. Pitch diameters in mm. Asked of belt drives only:
 * a plate does not tell a roller bearing, which on a coupling may run too lightly loaded.
 */
export function bearings(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  if (set.coupling.type !== 'belt') return null;

  const least = leastSheaveOf(candidate, context);
  if (least === 'unread')
    return toRead(
      { criterion: 'bearings', have: null, need: null, unit: 'mm', cite: CLAUSE },
      `The least sheave of ${candidate.frame} depends on power and poles: one of them is unknown.`,
      'Read power and speed on the plate',
      2,
    );
  if (least === null) return byShaft(candidate, context);
  const { pitchDiameterMm: have, changeable } = set.coupling.sheave;
  const compared = { criterion: 'bearings', have, need: least.pitchMm, unit: 'mm', cite: least.cite } as const;
  const need = figure(least.pitchMm, 0);
  if (have === null)
    return toRead(
      compared,
      `The motor’s sheave is unknown; this frame needs at least ${need} mm.`,
      'Measure the pitch diameter of the motor sheave',
      5,
    );
  if (have >= least.pitchMm - SHEAVE_STEP_MM)
    return ok(compared, `The sheave of ${figure(have, 0)} mm is no smaller than the frame’s least, ${need} mm.`);

  const says = `The sheave of ${figure(have, 0)} mm is smaller than the frame’s least, ${need} mm: the belt would overload bearing and shaft.`;
  if (changeable === false) return block(compared, says);
  const work = {
    id: 'sheave',
    what: `Fit a motor sheave of at least ${need} mm pitch diameter and a pump sheave to keep the ratio`,
    hours: context.settings.hours.sheave,
  } as const;
  return changeable === null ? toJudge(compared, says, work) : needsWork(compared, says, work);
}

/** Sheaves are listed by the tenth of an inch: a 3.0 in sheave is sold as 76 mm. */
const SHEAVE_STEP_MM = 0.5;

const CLAUSE = 'NEMA MG 1-14.42';

type Least = MinimumSheave | null | 'unread';

// Kept per motor: it rests on frame, poles and the largest plated rating alone.
const kept = new WeakMap<Motor, { least: Least }>();
function leastSheaveOf(candidate: Motor, { fit }: Context): Least {
  const known = kept.get(candidate);
  if (known !== undefined) return known.least;
  const least = fit.system === 'NEMA' ? ofNemaFrame(candidate, fit.frame) : null;
  kept.set(candidate, { least });
  return least;
}

function ofNemaFrame(candidate: Motor, frame: string): Least {
  if (!hasMinimumSheave(frame)) return null;
  const poles = candidate.poles ?? plateRows(candidate)[0]?.poles ?? null;
  const kw = largestKw(candidate);
  return poles === null || kw === null ? 'unread' : minimumSheave(frame, poles, kw);
}

function largestKw({ ratings }: Motor): number | null {
  let largest: number | null = null;
  for (const { kw } of ratings) if (kw !== null && (largest === null || kw > largest)) largest = kw;
  return largest;
}

function byShaft(candidate: Motor, { fit, failedFit }: Context): Finding {
  const have = fit.dimensions.shaftDiameterMm.value;
  const need = failedFit === null ? null : failedFit.dimensions.shaftDiameterMm.value;
  const compared = { criterion: 'bearings', have, need, unit: 'mm', cite: 'common practice, no source' } as const;
  if (have !== null && need !== null && have >= need)
    return note(
      compared,
      `No standard sets a least sheave for ${candidate.frame ?? 'this frame'}; the shaft of ${figure(have)} mm is no thinner than the failed motor’s, ${figure(need)} mm.`,
    );
  const thinner =
    have === null || need === null
      ? ''
      : `, and its shaft of ${figure(have)} mm is thinner than the failed motor’s, ${figure(need)} mm`;
  return toJudge(
    compared,
    `No standard sets a least sheave for ${candidate.frame ?? 'this frame'}${thinner}: hold the belt pull against the maker’s radial load.`,
  );
}
