import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Holding } from '@/lib/standards/dimension';
import type { Context } from '../context';
import { type Compared, type Finding, note, toJudge, toRead } from '../finding';

type Position = Holding['positions'][number];

/**
 * Is the motor made for the way its shaft points, and for feet on a wall or ceiling? The set states where the shaft
 * points; a wall or ceiling, and an untold direction, are read from the failed motor's code. Null: it is made for it.
 */
export function position(
  set: PumpSet,
  candidate: Motor,
  { fit, failedFit }: Context,
  compared: Compared,
): Finding | null {
  const was = failedFit === null ? null : failedFit.holding;
  const points = set.shaftDirection ?? (was === null ? null : was.shaft);
  const feetAt =
    set.mounting === 'face' || was === null || was.positions.includes('horizontal') ? null : feetOf(was.positions);
  const { positions } = fit.holding;
  const isPointed = points === null || positions.includes(points) || (points === 'horizontal' && feetAt !== null);
  if (isPointed && (feetAt === null || positions.includes(feetAt))) return null;

  const place = placeOf(points, feetAt, set.mounting !== 'face');
  const about = { ...compared, cite: CITE };
  if (isLikeForLike(set, candidate))
    return note(about, `No mark says it is made to stand ${place}; the failed motor was the same.`);
  const says = `No mark says it is made to stand ${place}.`;
  if (fit.holding.shaft === null && positions.length === 0)
    return toRead(about, says, 'Read the mounting (IM code) on this motor’s plate', 2);
  return toJudge(about, `${says} Turned, its bearings, seal, drains and cover have to suit.`);
}

const CITE = 'IEC 60034-7: every turn from the position of the code is a check (read in one text)';

const feetOf = (positions: readonly Position[]): 'wall' | 'ceiling' | null =>
  positions.includes('wall') ? 'wall' : positions.includes('ceiling') ? 'ceiling' : null;

function placeOf(points: Holding['shaft'], feetAt: 'wall' | 'ceiling' | null, hasFeet: boolean): string {
  const feet =
    feetAt === null
      ? hasFeet && points === 'horizontal'
        ? ' above its feet'
        : ''
      : feetAt === 'wall'
        ? ' with its feet on a wall'
        : ' with its feet on a ceiling';
  switch (points) {
    case null:
      return feet.trimStart();
    case 'horizontal':
      return `with a horizontal shaft${feet}`;
    case 'down':
      return `with the shaft down${feet}`;
    case 'up':
      return `with the shaft up${feet}`;
  }
}

/** The same frame and mounting stood here until it failed. */
const isLikeForLike = ({ failed }: PumpSet, { frame, mounting }: Motor): boolean =>
  failed !== null && frame !== null && failed.frame === frame && failed.mounting === mounting;
