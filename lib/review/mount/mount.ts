import type { Context } from '@/lib/matching/context';
import { face } from '@/lib/matching/criteria/mount/face';
import { mounting } from '@/lib/matching/criteria/mount/mounting';
import { shaftLength } from '@/lib/matching/criteria/mount/shaft-length';
import { bearings } from '@/lib/matching/criteria/surroundings/bearings';
import { type Finding, isWorse } from '@/lib/matching/finding';
import { position } from '@/lib/matching/mount/position';
import { type ReviewFinding, raised, type Urgency } from '../finding';
import type { ReviewCase } from '../review-case';

/**
 * Do face, frame, shaft and position suit how the set holds and couples a motor? What is told of the place is held against
 * the motor that stands in it: either the record is wrong, or the motor was made to fit. What only a reading would tell is
 * not raised: it stands there.
 */
export function mount({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const own = asItself(context);
  const compared = { criterion: 'mounting', have: motor.mounting, need: set.shaftDirection, cite: '' } as const;
  const asked = [
    mounting(set, motor, context),
    position({ ...set, failed: null }, motor, own, compared),
    face(set, motor, context),
    shaftLength(set, motor, own),
    bearings(set, motor, context),
  ];
  const wrong = asked.flatMap((found) => (found !== null && isWrong(found) ? [found] : []));
  const [first, ...rest] = wrong;
  if (first === undefined) return null;
  const worst = rest.reduce((so, one) => (isWorse(one.grade, so.grade) ? one : so), first);
  const others = wrong.filter((one) => one !== worst).map(({ says }) => says);
  const { have, need, unit, says, cite } = worst;
  return raised({
    ...{ rule: 'mount', urgency: urgencyHere(worst), have, need, unit, cite },
    says: [says, ...others].join(' '),
    reading: isContradiction(worst)
      ? 'Look at the set how the motor is held, and read its frame and mounting (5 min)'
      : null,
    figures: {
      ...{ frame: context.fit.frame, mounting: motor.mounting, held: set.mounting, points: set.shaftDirection },
      ...{ face: set.seat.face, sheaveMm: set.coupling.sheave.pitchDiameterMm },
    },
  });
}

/** The motor is no evidence for itself: that it stands there does not make it fit to. */
const asItself = (context: Context): Context => ({
  ...context,
  failedFit: null,
  seat: { ...context.seat, shaft: null },
});

const isWrong = ({ grade, by, criterion }: Finding): boolean =>
  grade === 'block' || (grade === 'check' && by === 'person') || (grade === 'work' && criterion === 'bearings');

/** No motor is bolted where it has nothing to be bolted by. */
const isContradiction = ({ grade, criterion }: Finding): boolean =>
  grade === 'block' && (criterion === 'mounting' || criterion === 'face');
const urgencyHere = (finding: Finding): Urgency => (isContradiction(finding) ? 'look' : 'plan');
