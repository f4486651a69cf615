import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from '../context';
import type { RatingRow } from '../context/rating-row';
import { isSamePlate } from '../context/same-plate';
import { block, type Compared, type Finding, toJudge, toRead } from '../finding';

/** Does the starter suit this kind of motor? Null: it does. Rules of the trade, from memory. */
export function kindSuits(set: PumpSet, candidate: Motor, { row }: Context, compared: Compared): Finding | null {
  const { start } = set.supply;
  const had = set.failed?.kind ?? null;
  const isLikeForLike = isSamePlate(set, candidate, row);
  switch (candidate.kind) {
    case 'single-phase':
      if (start === null) return unknownStart(compared);
      return start === 'direct' ? null : block(compared, `A single-phase motor cannot be started by ${BY[start]}.`);
    case 'permanent-magnet':
    case 'reluctance':
      if (start === null) return unknownStart(compared);
      if (start !== 'drive') return block(compared, `A ${candidate.kind} motor runs only on a drive.`);
      return isLikeForLike ? null : toJudge(compared, `The drive must be able to run this ${candidate.kind} motor.`);
    case 'two-speed':
      return isLikeForLike && set.failed?.winding === candidate.winding && set.failed?.leads === candidate.leads
        ? null
        : toJudge(compared, 'A two-speed motor: the starter must be made for its winding.');
    case 'wound-rotor':
      if (start === null) return unknownStart(compared);
      if (start === 'star-delta' || start === 'part-winding')
        return block(compared, `A wound-rotor motor is not started by ${BY[start]}.`);
      if (isLikeForLike) return null;
      return toJudge(compared, 'A wound-rotor motor: is there a rotor starter that suits its rotor volts and amps?');
    case 'cage':
      if (had === 'two-speed' && start !== 'drive')
        return toJudge(compared, 'The failed motor had two speeds, this one has one: is the other speed still needed?');
      if (had === 'wound-rotor')
        return toJudge(compared, 'The failed motor started on rotor resistance: a cage motor takes its full inrush.');
      return null;
    case null:
      return ofUnknownKind(candidate, had, row, compared);
  }
}

/** Slip on the plate shows an induction motor; then only what the failed motor was can be in doubt. */
function ofUnknownKind(
  candidate: Motor,
  had: Motor['kind'],
  { slipRpm }: RatingRow,
  compared: Compared,
): Finding | null {
  const isThreePhase = candidate.phases !== 1;
  if (isThreePhase && slipRpm !== null && (had === null || had === 'cage')) return null;
  return toRead(
    compared,
    'What kind of motor it is is unknown, and so whether the starter suits it.',
    'Read the plate: cage, wound rotor, permanent magnet, two speeds',
    5,
  );
}

const BY = {
  direct: 'a direct starter',
  'star-delta': 'a star-delta starter',
  'part-winding': 'a part-winding starter',
  soft: 'a soft starter',
  drive: 'a drive',
} as const;

const unknownStart = (compared: Compared) =>
  toRead(
    compared,
    'How this set is started is unknown, and this motor is no plain cage motor.',
    'Look in the starter: direct, star-delta, soft or drive',
    5,
  );
