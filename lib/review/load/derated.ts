import { temperatureAltitude } from '@/lib/matching/criteria/load/temperature-altitude';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import { loadSum } from '../load-sum';
import { isByDerating, loadedShare } from '../loaded-share';
import type { ReviewCase } from '../review-case';

/**
 * Do heat, height or unbalanced volts leave less than the duty asks, of a motor that could carry it elsewhere? In kW.
 * Where the load is not known and something is lost, or where nobody can tell what is lost, it asks for a look. Not asked
 * where the surroundings take nothing.
 */
export function derated(asked: ReviewCase): ReviewFinding | null {
  const { set, motor, context } = asked;
  const { derating, row } = context;
  const found = temperatureAltitude(set, motor, context);
  if (found === null) return null;
  const share = loadedShare(asked);
  const sum = loadSum(asked);
  const figures = {
    ...{ shaftKw: set.load.shaftKw, kw: row.kw, factor: derating.factor },
    ...{ ambientC: set.surroundings.ambientC, altitudeM: set.surroundings.altitudeM },
    ...{ platedC: motor.ambientC, unbalancePct: set.supply.unbalancePct },
  };
  const about = {
    rule: 'derated',
    have: share?.leftKw ?? null,
    need: sum?.motorKw ?? null,
    unit: 'kW',
    figures,
  } as const;
  if (share !== null && sum !== null && isByDerating(share))
    return raised({
      ...about,
      urgency: 'at-once',
      says: `${sum.says}. ${lost(asked)} ${figure(row.kw as number)} kW × ${figure(derating.factor, 3)} = ${figure(share.leftKw)} kW: it is loaded to ${figure(100 * share.ofLeft, 0)} % of that.`,
      cite: citesOf(asked),
    });
  if (found.grade === 'check')
    return raised({
      ...about,
      urgency: found.by === 'reading' ? 'look' : 'plan',
      says: found.says,
      cite: found.cite,
      reading: found.reading,
    });
  if (derating.factor < 1 && share === null)
    return raised({
      ...about,
      urgency: 'look',
      says: `${lost(asked)} ${figure(100 * derating.factor, 0)} % of its rating${row.kw === null ? '' : `, ${figure(row.kw * derating.factor)} of ${figure(row.kw)} kW`}; the load is not known.`,
      cite: citesOf(asked),
      reading: row.kw === null ? READ_PLATE : READ_LOAD,
    });
  return null;
}

const READ_LOAD = 'Shaft power of the pump from its curve, or input power at full duty at the starter (15 min)';
const READ_PLATE = 'Rated hp or kW on the motor plate (2 min)';

const WORDS = { ambient: 'heat', altitude: 'height', unbalance: 'unbalanced volts' } as const;

/** "Heat (0.92) and height (0.97) leave". */
function lost({ context }: ReviewCase): string {
  const told = context.derating.parts.map(({ what, factor }) => `${WORDS[what]} (${figure(factor, 3)})`);
  const text = told.length < 2 ? told.join('') : `${told.slice(0, -1).join(', ')} and ${told.at(-1)}`;
  const isOne = told.length === 1 && context.derating.parts[0]?.what !== 'unbalance';
  return `${text.charAt(0).toUpperCase()}${text.slice(1)} ${isOne ? 'leaves' : 'leave'}`;
}

const citesOf = ({ context }: ReviewCase): string => context.derating.parts.map(({ cite }) => cite).join('; ');
