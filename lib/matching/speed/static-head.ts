import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { flowTolerancePct } from '../context/operating-point';
import { type Compared, type Finding, toJudge, toRead } from '../finding';

/** Slower by more than this, a centrifugal pump is asked for its static head. */
const SLOWER_PCT = 2;
/** Shut-off head over duty head of an ordinary centrifugal pump: common practice, no source. */
const SHUT_OFF = 1.2;

/** A centrifugal pump against a static head loses more flow than speed. Null when that is no question. */
export function againstStaticHead(set: PumpSet, compared: Compared, changePct: number): Finding | null {
  const { kind, staticHeadPct } = set.load;
  if (kind !== 'quadratic' || changePct >= -SLOWER_PCT) return null;
  if (staticHeadPct === null)
    return toRead(
      compared,
      `The pump runs ${figure(-changePct, 1)} % slower, and the flow falls more than that against a static head.`,
      'Static head as a share of the total head, from levels and gauges',
      30,
    );
  const fallPct = flowFallPct(staticHeadPct / 100, 1 + changePct / 100);
  if (fallPct <= flowTolerancePct(set)) return null;
  return toJudge(
    { ...compared, cite: CITE },
    `The flow may fall by about ${figure(fallPct, 0)} % against this static head: look at the pump curve.`,
  );
}

const CITE = 'pump affinity laws (read in two texts); shape of the pump curve: common practice, no source';

/** Pump head 1.2·r² − 0.2·q² against system head s + (1 − s)·q², in shares of the duty, at speed r. */
function flowFallPct(s: number, r: number): number {
  const left = SHUT_OFF * r * r - s;
  return left <= 0 ? 100 : 100 * (1 - Math.sqrt(left / (SHUT_OFF - s)));
}
