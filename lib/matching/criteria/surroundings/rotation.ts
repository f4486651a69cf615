import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { block, type Finding, ok, toJudge, toRead } from '../../finding';

/**
 * May the motor turn the way the pump turns, seen from the drive end? A fan or winding built for one way is not turned
 * round at the terminals. Not asked where the pump may turn either way or nobody has said, unless the failed motor was
 * built for one way.
 */
export function rotation(set: PumpSet, candidate: Motor): Finding | null {
  const stated = set.rotation;
  const had = stated === null && set.failed !== null ? set.failed.rotation : null;
  const need = stated ?? had;
  if (need === null || need === 'either') return null;

  const have = candidate.rotation;
  const compared = { criterion: 'rotation', have, need, cite: CITE } as const;
  const pump = stated === null ? `The failed motor was built for ${WAY[need]}` : `The pump turns ${WAY[need]}`;
  if (have === null) return toRead(compared, `${pump}; this motor’s way of turning is unknown.`, READING, 2);
  if (have === need) return ok(compared, `Built to turn ${WAY[have]}.`);
  if (have === 'either')
    return ok(compared, `Turns either way: connect it to turn ${WAY[need]}, seen from the drive end.`);
  const says = `${pump}; this motor is built for ${WAY[have]} only.`;
  return stated === null ? toJudge(compared, `${says} See the pump’s arrow.`) : block(compared, says);
}

const WAY = { cw: 'clockwise', ccw: 'anticlockwise' } as const;
const CITE = 'common practice, no source; sense of view: IEC 60034-8';
const READING = 'Look for a direction arrow or a fan with curved blades; none of them means either way';
