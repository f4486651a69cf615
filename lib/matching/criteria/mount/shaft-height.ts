import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { block, type Compared, type Finding, needsWork, note, ok, toJudge, toRead, type Work } from '../../finding';
import { citeOfBoth } from '../../mount/cite-of-both';

/**
 * Does the shaft come to the height of the pump's, with what lies under its feet? In mm, nominal against nominal.
 * The stack is the shims present and what the candidate is lower by. Not asked of a motor held by its face alone.
 */
export function shaftHeight(set: PumpSet, _: Motor, context: Context): Finding | null {
  const { base, seat, fit } = context;
  if (base.height === 'not-asked') return null;

  const height = fit.dimensions.shaftHeightMm;
  const compared: Compared = {
    criterion: 'shaft-height',
    have: height.value,
    need: seat.shaftHeight.value,
    unit: 'mm',
    cite: citeOfBoth(height, seat.shaftHeight, COMMON),
  };
  if (base.addMm === null) return unknown(height.value, compared);
  if (base.height === 'same') return ok(compared, base.isTransition ? SAME_ON_PLATE : SAME);
  if (set.coupling.type === 'belt') {
    const found = onBelt(set.coupling.takeUpMm, base.addMm, base.stackMm, compared);
    if (found !== null) return found;
  }
  return underFeet(set, base.addMm, context, compared);
}

const SAME = 'Same shaft height: the shims stay as they are.';
const SAME_ON_PLATE = 'Same shaft height: the transition base takes the place of the shims.';
const COMMON = 'common practice, no source';

function unknown(have: number | null, compared: Compared): Finding {
  return have === null
    ? toRead(compared, 'Shaft height unknown.', 'Measure on this motor from the feet to the middle of the shaft', 5)
    : toRead(
        compared,
        'The height that the set needs is unknown.',
        'Measure at the set from the base, less the shims, to the middle of the pump shaft',
        10,
      );
}

/** A belt does not mind a few mm; null where height under the feet has to decide after all. */
function onBelt(takeUpMm: number | null, addMm: number, stackMm: number | null, compared: Compared): Finding | null {
  const mm = Math.abs(addMm);
  const is = `${figure(mm)} mm ${addMm > 0 ? 'lower' : 'higher'}`;
  if (takeUpMm !== null && mm <= takeUpMm + DUST)
    return note(compared, `Shaft is ${is}: the belt’s take-up of ${figure(takeUpMm)} mm covers it.`);
  if (addMm > 0 || (stackMm !== null && stackMm >= 0)) return null;
  if (takeUpMm === null)
    return toRead(
      compared,
      `Shaft is ${is} and the belt’s take-up is unknown.`,
      'Measure the travel left on the slide rails',
      5,
    );
  return toJudge(
    compared,
    `Shaft is ${is}, beyond the belt’s take-up of ${figure(takeUpMm)} mm: another belt length or a lower base.`,
  );
}

const DUST = 1e-9;

function underFeet(set: PumpSet, addMm: number, { base, settings }: Context, compared: Compared): Finding {
  const { height, stackMm } = base;
  const present = set.base.shimsPresentMm;
  if (height === 'unknown' || stackMm === null)
    return toRead(
      compared,
      `Shaft is ${figure(-addMm)} mm higher; how much shim lies under the feet now is unknown.`,
      'Measure at the set the shims under each foot of the old motor',
      10,
    );
  if (height === 'too-high')
    return block(compared, `Shaft is ${figure(-addMm)} mm too high: ${takenOut(present, -stackMm)}.`);
  const says =
    addMm < 0
      ? `Shaft is ${figure(-addMm)} mm higher; ${remaining(Math.max(0, stackMm))}.`
      : `Shaft is ${figure(addMm)} mm lower${present === null ? '; what lies under the feet now is unknown and comes on top.' : `: ${figure(stackMm)} mm under each foot in all.`}`;
  return needsWork(compared, says, workOf(addMm, stackMm, base, settings.hours));
}

const remaining = (shimsMm: number) =>
  figure(shimsMm) === '0' ? 'no shims remain' : `${figure(shimsMm)} mm of shims remain`;

/** What shims can do about it. Null shims: not known how thick they are. */
function takenOut(shimsMm: number | null, leftMm: number): string {
  if (shimsMm === 0) return 'there are no shims to take out';
  const shims = shimsMm === null ? 'the shims' : `the ${figure(shimsMm)} mm of shims`;
  return `taking out ${shims} leaves it ${figure(leftMm)} mm above the pump’s`;
}

function workOf(
  addMm: number,
  stackMm: number,
  { height, isTransition }: Context['base'],
  hours: Context['settings']['hours'],
): Work {
  if (isTransition)
    return {
      id: 'transition-base',
      what: `Make a transition base ${figure(stackMm)} mm high`,
      hours: hours['transition-base'],
    };
  if (height === 'above-shims')
    return {
      id: 'ground-block',
      what: `Fit a ground block of ${figure(stackMm)} mm under each foot, with longer bolts`,
      hours: hours['ground-block'],
    };
  const what =
    addMm > 0 ? `Shim each foot by ${figure(addMm)} mm` : `Take ${figure(-addMm)} mm of shims from under each foot`;
  return { id: 'shims', what, hours: hours.shims };
}
