import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { assess } from '../assess';
import { buyable } from '../buy/buyable';
import { kindsOf } from '../screen/kinds';
import { screenOf } from '../screen/screen';
import { type Candidate, type JudgedCandidate, type Source, soonnessOf } from './candidate';

export interface Ranked {
  /** Those that could go in, by where they would come from, best first. */
  fits: Record<Source, JudgedCandidate[]>;
  /** How many were looked at, by where they would come from. */
  asked: Record<Source, number>;
  /** Some of those that cannot, the nearest misses first, with their findings. */
  unsuitable: JudgedCandidate[];
  /** How many cannot, all told. */
  unsuitableCount: number;
}

/** So many of the unsuitable are shown with their reasons. */
const UNSUITABLE_SHOWN = 30;
/** Of those the screen dropped, so many are judged to find the nearest misses. */
const MISSES_JUDGED = 300;

/**
 * Every motor of the site that might go into the set, and every standard rating that could be bought: the screen drops
 * the hopeless, the rest is judged and put in order. `asOf`: the day as YYYY-MM-DD.
 */
export function ranked(set: PumpSet, ofSite: readonly Candidate[], settings: SiteSettings, asOf: string): Ranked {
  const candidates = [...ofSite, ...buyable(set).map((motor): Candidate => ({ from: 'buy', motor }))];
  const motors = candidates.map(({ motor }) => motor);
  const passing = new Set(screenOf(kindsOf(motors), settings)(set).flatMap(({ members }) => members));
  const isLeft = ({ motor }: Candidate) => passing.has(motor);
  const judged = judge(candidates.filter(isLeft), set, settings, asOf);
  const fit = judged.filter(({ result }) => result.verdict !== 'unsuitable');
  const missed = judged.filter(({ result }) => result.verdict === 'unsuitable');
  const dropped = candidates.filter((one) => !isLeft(one));
  const more = judge(dropped.slice(0, MISSES_JUDGED), set, settings, asOf);
  const countOf = (source: Source) => candidates.filter(({ from }) => from === source).length;
  const of = (source: Source) => fit.filter(({ candidate }) => candidate.from === source);
  return {
    fits: { shelf: of('shelf'), set: of('set'), buy: of('buy') },
    asked: { shelf: countOf('shelf'), set: countOf('set'), buy: countOf('buy') },
    unsuitable: [...missed, ...more].sort(byMisses).slice(0, UNSUITABLE_SHOWN),
    unsuitableCount: missed.length + dropped.length,
  };
}

function judge(
  candidates: readonly Candidate[],
  set: PumpSet,
  settings: SiteSettings,
  asOf: string,
): JudgedCandidate[] {
  const byId = new Map(candidates.map((candidate) => [candidate.motor.id, candidate]));
  const asked = { set, candidates: [...byId.values()].map(({ motor }) => motor), asOf };
  const soonness = new Map([...byId].map(([id, candidate]) => [id, soonnessOf(candidate)]));
  return assess(asked, settings, soonness).results.flatMap((result) => {
    const candidate = byId.get(result.id);
    return candidate === undefined ? [] : [{ candidate, result }];
  });
}

const missesOf = ({ result }: JudgedCandidate) => result.findings.filter(({ grade }) => grade === 'block').length;
const byMisses = (a: JudgedCandidate, b: JudgedCandidate) =>
  missesOf(a) - missesOf(b) || (a.candidate.motor.id < b.candidate.motor.id ? -1 : 1);
