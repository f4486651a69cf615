import type { Motor } from '@/lib/plant/motor';
import type { Finding } from './finding';
import type { SpareState } from './spare-state';
import type { Verdict } from './verdict';

/** Where a candidate is, soonest in hand first. The last two come after every shelf motor, whatever their verdict. */
export const WHEREABOUTS = ['same-store', 'same-site', 'other-site', 'on-order', 'other-set', 'to-buy'] as const;
export type Whereabouts = (typeof WHEREABOUTS)[number];

/** A candidate as judged: all that its place in the list rests on. */
export interface Judged {
  candidate: Motor;
  findings: readonly Finding[];
  verdict: Verdict;
  hours: number;
  spare: SpareState;
  /** Power at this supply; null unknown. */
  kw: number | null;
  /** Null: not told, taken as in hand. */
  whereabouts: Whereabouts | null;
}

/** What a place in the list rests on, weightiest first. Each is a number, smaller is better. */
export const KEYS = ['refused', 'source', 'standing', 'hours', 'soonness', 'checks', 'power'] as const;
export type Key = (typeof KEYS)[number];
export type Place = Record<Key, number>;

export interface Placed extends Judged {
  place: Place;
}

/** Candidates best first. The order they came in never matters: the last word is the id's. */
export function inOrder(judged: readonly Judged[], wantedKw: number | null): Placed[] {
  return judged.map((one) => ({ ...one, place: placeOf(one, wantedKw) })).sort(byPlace);
}

/** The first thing by which two candidates differ; null when only the id tells them apart. */
export const decidedBy = (a: Placed, b: Placed): Key | null =>
  KEYS.find((key) => a.place[key] !== b.place[key]) ?? null;

/** True for a check-first that a few short readings would make a straight swap. */
export const isMeasureFirst = ({ verdict, findings }: Pick<Judged, 'verdict' | 'findings'>): boolean =>
  verdict === 'check-first' &&
  findings.every((finding) => finding.work === null && (finding.grade !== 'check' || isShort(finding)));

export const checksOf = (findings: readonly Finding[]): number => {
  let checks = 0;
  for (const { grade } of findings) if (grade === 'check') checks += 1;
  return checks;
};

/** A reading is short when it is taken at the motor or the pump without waiting for anyone. */
const SHORT_READING_MIN = 15;

function isShort({ by, reading }: Finding): boolean {
  const minutes = reading === null ? undefined : /\((\d+(?:\.\d+)?) min\)$/.exec(reading)?.[1];
  return by === 'reading' && minutes !== undefined && Number(minutes) <= SHORT_READING_MIN;
}

function placeOf(one: Judged, wantedKw: number | null): Place {
  return {
    refused: one.spare.refused === null ? 0 : 1,
    source: one.whereabouts === 'to-buy' ? 2 : one.whereabouts === 'other-set' ? 1 : 0,
    standing: standingOf(one),
    hours: one.hours,
    soonness: one.whereabouts === null ? 0 : WHEREABOUTS.indexOf(one.whereabouts),
    checks: checksOf(one.findings),
    power: distance(one.kw, wantedKw),
  };
}

function standingOf(one: Judged): number {
  switch (one.verdict) {
    case 'straight-swap':
      return 0;
    case 'swap-with-work':
      return 2;
    case 'check-first':
      return isMeasureFirst(one) ? 1 : 3;
    case 'unsuitable':
      return 4;
  }
}

/** How far two powers are apart, as a ratio: twice and half are equally far. Unknown is farthest. */
function distance(kw: number | null, wantedKw: number | null): number {
  if (wantedKw === null) return 0;
  if (kw === null || kw <= 0) return Number.POSITIVE_INFINITY;
  return Math.round(Math.abs(Math.log(kw / wantedKw)) * 1e6) / 1e6;
}

function byPlace(a: Placed, b: Placed): number {
  const key = decidedBy(a, b);
  if (key !== null) return a.place[key] < b.place[key] ? -1 : 1;
  return a.candidate.id < b.candidate.id ? -1 : a.candidate.id > b.candidate.id ? 1 : 0;
}
