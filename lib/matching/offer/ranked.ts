import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { assess } from '../assess';
import { buyable } from '../buy/buyable';
import { type Candidate, type JudgedCandidate, type Source, soonnessOf } from './candidate';
import { type Sieve, sieveOf } from './sieve';

/** What could go in, without the findings of what could not. */
export interface Fitting {
  /** Those that could go in, by where they would come from, best first. */
  fits: Record<Source, JudgedCandidate[]>;
  /** How many were looked at, by where they would come from. */
  asked: Record<Source, number>;
  /** How many cannot, all told. */
  unsuitableCount: number;
  /** Judges and answers some of those that cannot, the nearest misses first. */
  misses: () => JudgedCandidate[];
}

export interface Ranked extends Omit<Fitting, 'misses'> {
  /** Some of those that cannot, the nearest misses first, with their findings. */
  unsuitable: JudgedCandidate[];
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
  const sieve = sieveOf(
    ofSite.map(({ motor }) => motor),
    settings,
  );
  const { misses, ...fitting } = fittingOf(set, ofSite, settings, asOf, sieve);
  return { ...fitting, unsuitable: misses() };
}

/** The same with a sieve that was made before, of these motors and perhaps more. */
export function fittingOf(
  set: PumpSet,
  ofSite: readonly Candidate[],
  settings: SiteSettings,
  asOf: string,
  sieve: Sieve,
): Fitting {
  const toBuy = buyable(set).map((motor): Candidate => ({ from: 'buy', motor }));
  const bought = sieveOf(
    toBuy.map(({ motor }) => motor),
    settings,
  );
  const candidates = [...ofSite, ...toBuy];
  const passing = new Set([...sieve.passing(set), ...bought.passing(set)]);
  const kindOf = (motor: Motor) => sieve.kindOf(motor) ?? bought.kindOf(motor);
  const judged = judge(
    candidates.filter(({ motor }) => passing.has(motor)),
    { set, settings, asOf, kindOf },
  );
  const dropped = candidates.filter(({ motor }) => !passing.has(motor));
  const fit = judged.filter(({ result }) => result.verdict !== 'unsuitable');
  const missed = judged.filter(({ result }) => result.verdict === 'unsuitable');
  const countOf = (source: Source) => candidates.filter(({ from }) => from === source).length;
  const of = (source: Source) => fit.filter(({ candidate }) => candidate.from === source);
  return {
    fits: { shelf: of('shelf'), set: of('set'), buy: of('buy') },
    asked: { shelf: countOf('shelf'), set: countOf('set'), buy: countOf('buy') },
    unsuitableCount: missed.length + dropped.length,
    misses: () => {
      const more = judge(dropped.slice(0, MISSES_JUDGED), { set, settings, asOf, kindOf });
      return [...missed, ...more].sort(byMisses).slice(0, UNSUITABLE_SHOWN);
    },
  };
}

function judge(
  candidates: readonly Candidate[],
  {
    set,
    settings,
    asOf,
    kindOf,
  }: { set: PumpSet; settings: SiteSettings; asOf: string; kindOf: (motor: Motor) => unknown },
): JudgedCandidate[] {
  const byId = new Map(candidates.map((candidate) => [candidate.motor.id, candidate]));
  const asked = { set, candidates: [...byId.values()].map(({ motor }) => motor), asOf };
  const soonness = new Map([...byId].map(([id, candidate]) => [id, soonnessOf(candidate)]));
  return assess(asked, settings, soonness, kindOf).results.flatMap((result) => {
    const candidate = byId.get(result.id);
    return candidate === undefined ? [] : [{ candidate, result }];
  });
}

const missesOf = ({ result }: JudgedCandidate) => result.findings.filter(({ grade }) => grade === 'block').length;
const byMisses = (a: JudgedCandidate, b: JudgedCandidate) =>
  missesOf(a) - missesOf(b) || (a.candidate.motor.id < b.candidate.motor.id ? -1 : 1);
