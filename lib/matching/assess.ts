import type { AssessCase } from '@/lib/plant/assess-case';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { contextOf, type JudgedBy } from './context';
import type { OperatingPoint } from './context/operating-point';
import { ratingRowOf } from './context/rating-row';
import type { Finding } from './finding';
import { findingsOf } from './findings-of';
import { hoursOf } from './hours';
import { inOrder, type Judged, type Whereabouts } from './order';
import { spareState } from './spare-state';
import { type Verdict, verdictOf } from './verdict';
import { whyOf } from './why';

type PointFigure = 'motorRpm' | 'pumpRpm' | 'pumpKw' | 'motorKw' | 'loadPct' | 'torquePct' | 'amps' | 'flowChangePct';

export interface Result {
  id: string;
  rank: number;
  verdict: Verdict;
  hours: number;
  why: string;
  operatingPoint: Pick<OperatingPoint, PointFigure>;
  findings: Finding[];
}

export interface Assessment {
  tag: string;
  results: Result[];
}

/** Where each candidate is, by its id; one that is not named is taken as in hand. */
export type WhereaboutsById = ReadonlyMap<string, Whereabouts>;

/** Which candidates are alike in all that a finding reads: one answer then does for all of a kind. */
export type KindOf = (candidate: Motor) => unknown;

/**
 * Every candidate judged for the set and put in order, best first. Each candidate comes out once. One whose winding
 * reads below the least insulation stands last and is unsuitable, whatever its findings; `why` says so.
 */
export function assess(
  asked: AssessCase,
  settings: SiteSettings,
  whereabouts: WhereaboutsById = NOT_TOLD,
  kindOf: KindOf = EACH_ALONE,
): Assessment {
  const { set, candidates, asOf } = asked;
  const by = { settings, asOf };
  const answers = new Map<unknown, Answered>();
  const answerFor = (candidate: Motor): Answered => {
    const kind = kindOf(candidate);
    const answered = answers.get(kind) ?? answeredFor(set, candidate, by);
    answers.set(kind, answered);
    return answered;
  };
  const judged = candidates.map((candidate) => ({
    ...judgedBy(answerFor(candidate), candidate, by),
    whereabouts: whereabouts.get(candidate.id) ?? null,
  }));

  const wantedKw = wantedKwOf(set);
  const placed = inOrder(judged, wantedKw);
  const results = placed.map((one, i): Result => {
    const { candidate, verdict, hours } = one;
    const why = whyOf(one, placed[i + 1] ?? null, placed.length === 1, wantedKw, settings.hours['spare-test']);
    const { shownPoint, shownFindings } = answerFor(candidate);
    return {
      ...{ id: candidate.id, rank: i + 1, verdict, hours, why },
      operatingPoint: { ...shownPoint },
      findings: shownFindings,
    };
  });
  return { tag: set.tag, results };
}

/** One candidate for one set: findings, verdict, hours and operating point, before it is put in order. */
export function judge(
  set: PumpSet,
  candidate: Motor,
  by: JudgedBy,
): Omit<Judged, 'whereabouts'> & { point: OperatingPoint } {
  const answered = answeredFor(set, candidate, by);
  return { ...judgedBy(answered, candidate, by), point: answered.point };
}

/** What is the same for all candidates of a kind. */
interface Answered {
  findings: Finding[];
  kw: number | null;
  point: OperatingPoint;
  shownFindings: Finding[];
  shownPoint: Result['operatingPoint'];
}

function answeredFor(set: PumpSet, candidate: Motor, by: JudgedBy): Answered {
  const context = contextOf(set, candidate, by);
  const findings = findingsOf(set, candidate, context);
  const { point, row } = context;
  return { findings, kw: row.kw, point, shownFindings: findings.map(tidied), shownPoint: shown(point) };
}

/** One candidate of the kind, with what its own time on the shelf adds. */
function judgedBy({ findings, kw }: Answered, candidate: Motor, by: JudgedBy): Omit<Judged, 'whereabouts'> {
  const spare = spareState(candidate, by.asOf);
  const verdict = spare.refused === null ? verdictOf(findings) : 'unsuitable';
  const hours = hoursOf(findings, by.settings, spare.test === null ? [] : ['spare-test']);
  return { candidate, findings, verdict, hours, spare, kw };
}

const EACH_ALONE: KindOf = (candidate) => candidate;
const NOT_TOLD: WhereaboutsById = new Map();

/** The power a candidate should be near: the failed motor's at this supply, else what the pump asks. */
function wantedKwOf(set: PumpSet): number | null {
  const failedKw = set.failed === null ? null : ratingRowOf(set, set.failed).kw;
  return failedKw ?? set.load.shaftKw;
}

function shown(point: OperatingPoint): Result['operatingPoint'] {
  return {
    motorRpm: rounded(point.motorRpm, 1),
    pumpRpm: rounded(point.pumpRpm, 1),
    pumpKw: rounded(point.pumpKw, 3),
    motorKw: rounded(point.motorKw, 3),
    loadPct: rounded(point.loadPct, 1),
    torquePct: rounded(point.torquePct, 1),
    amps: rounded(point.amps, 2),
    flowChangePct: rounded(point.flowChangePct, 1),
  };
}

/** Clears binary dust from converted lengths: 2.6 in is 66.04 mm, not 66.03999… */
const tidied = (finding: Finding): Finding => ({ ...finding, have: tidy(finding.have), need: tidy(finding.need) });
const tidy = (value: Finding['have']) => (typeof value === 'number' ? rounded(value, 4) : value);

function rounded(value: number | null | undefined, digits: number): number | null {
  if (value === null || value === undefined || !Number.isFinite(value)) return null;
  const scale = 10 ** digits;
  return Math.round(value * scale) / scale + 0; // + 0 turns a negative zero into zero
}
