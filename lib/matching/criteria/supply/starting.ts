import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from '../../context';
import { block, type Compared, type Finding, needsWork, ok, toJudge, toRead } from '../../finding';
import { joined } from '../../joined';
import { inrush } from '../../starting/inrush';
import { kindSuits } from '../../starting/kind-suits';
import { starDelta } from '../../starting/star-delta';

/**
 * Can this winding be started by this starter, with what stands beside it? Not asked of a cage motor where neither the
 * starter, nor capacitors, nor an instantaneous trip is stated.
 */
export function starting(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { start, capacitorKvar, instantaneousTripA } = set.supply;
  const had = set.failed?.kind ?? 'cage';
  const isUsual = (candidate.kind === 'cage' || candidate.kind === null) && had === 'cage';
  if (start === null && capacitorKvar === null && instantaneousTripA === null && isUsual) return null;

  const have = candidate.winding ?? candidate.kind;
  const compared: Compared = { criterion: 'starting', have, need: start, cite: COMMON };
  let found = candidate.kind === 'cage' && had === 'cage' ? null : kindSuits(set, candidate, context, compared);
  if (start === 'star-delta') found = joined(found, starDelta(set, candidate, context, compared));
  if (start === 'part-winding') found = joined(found, partWinding(candidate, compared));
  if (capacitorKvar !== null && capacitorKvar > 0)
    found = joined(found, capacitors(set, context, capacitorKvar, compared));
  if (instantaneousTripA !== null) found = joined(found, inrush(set, candidate, context, instantaneousTripA, compared));
  return found ?? ok(compared, start === null ? 'Nothing stated stands against its start.' : SAYS[start]);
}

const COMMON = 'common practice, no source';
const SAYS = {
  direct: 'Direct start asks nothing of the winding.',
  'star-delta': 'The winding suits a star-delta starter.',
  'part-winding': 'The winding suits a part-winding starter.',
  soft: 'A soft starter asks nothing of the winding.',
  drive: 'A drive starts any winding.',
} as const;

function partWinding(candidate: Motor, compared: Compared): Finding | null {
  const about = { ...compared, cite: 'part-winding start needs a winding made for it (from memory)' };
  if (candidate.winding === 'part-winding-6') return null;
  return candidate.winding === null
    ? toRead(
        about,
        'Not declared a part-winding motor.',
        'Read the connection diagram on the plate or in the terminal box',
        10,
      )
    : toJudge(about, `A ${candidate.winding} winding is not declared for part-winding start.`);
}

function capacitors({ supply: { start } }: PumpSet, { settings }: Context, kvar: number, compared: Compared): Finding {
  const hours = settings.hours['power-factor-capacitor'];
  if (start === 'drive' || start === 'soft') {
    const work = {
      id: 'power-factor-capacitor',
      what: `Remove the ${kvar} kvar capacitor at the motor`,
      hours,
    } as const;
    return {
      ...block(
        compared,
        `No capacitor may stay at a motor on a ${start === 'soft' ? 'soft starter' : 'drive'}: remove it first.`,
      ),
      work,
    };
  }
  return needsWork(compared, 'A capacitor at the motor is sized for one motor: too large a one over-excites it.', {
    id: 'power-factor-capacitor',
    what: `Resize the ${kvar} kvar capacitor at the motor, or remove it`,
    hours,
  });
}
