import type { MountDrawingProps } from '@/app/look/mount-drawing';
import type { OfferLine } from '@/app/sets/[tag]/candidates/offer-line';
import type { Mount } from '@/lib/drawing/mount';
import type { Job } from '@/lib/job/job';
import type { Result } from '@/lib/matching/assess';
import type { Candidate, Source, Unoffered } from '@/lib/matching/offer/candidate';
import type { SetLine } from '@/lib/offline/contents';
import type { OutboxMessage } from '@/lib/offline/outbox';
import type { Pack, PackMotor, PackSet } from '@/lib/offline/pack';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';
import type { Whereabouts } from '@/lib/plant/whereabouts';

/** What is known of the snapshot besides its sets and motors. */
export interface About extends Pick<Pack, 'siteId' | 'userId' | 'site' | 'person' | 'at' | 'cursor' | 'shelves'> {
  /** How far the phone's clock is ahead of the server's, ms. */
  clockAhead: number;
  /** When the phone last heard that the person is still signed in, by the phone's clock, ms. */
  heardAt: number;
}

/** Something recorded at the pump that the register does not have yet. */
export interface Waiting {
  key: string;
  message: OutboxMessage;
  /** In words, for the list of what waits. */
  says: string;
  /** The set it concerns. */
  tag: string;
  /** By the phone's clock, ms. */
  at: number;
  state: 'waiting' | 'taken' | 'refused';
  /** Why it did not go in; null while it waits. */
  told: string | null;
}

export interface Status {
  about: Pick<About, 'site' | 'person' | 'at' | 'userId' | 'siteId'> | null;
  sets: number;
  motors: number;
  waiting: number;
  /** Somebody was first, or it was refused. */
  toSettle: number;
  /** Recorded by another person on this phone; theirs go up when they sign in. */
  ofOthers: number;
  isSignedOut: boolean;
  /** Why the snapshot could not be brought up to date; null: it was, or was not tried. */
  problem: string | null;
  /** The site's moment by the server's clock, ISO 8601. */
  now: string;
}

export interface SetHere {
  set: PackSet;
  pumpSet: PumpSet;
  motor: PackMotor | null;
  /** The motor to scale. */
  mount: Mount | null;
  /** The row of its plate at the set's supply. */
  atSupply: Rating | null;
  waiting: Waiting[];
}
export interface MotorHere {
  motor: PackMotor;
  mount: Mount;
  at: Whereabouts;
}
/** What one source offers: the lines to show, how many fit, how many were looked at. */
export interface SourceHere {
  lines: OfferLine[];
  count: number;
  asked: number;
  /** Where nothing fits. */
  nearest: OfferLine | null;
}
export interface RankedHere extends Pick<PackSet, 'tag' | 'service' | 'area'> {
  isCriticalityTold: boolean;
  /** The plant number of the motor in the set. */
  failed: string | null;
  sources: Record<Source, SourceHere>;
  unsuitableCount: number;
}
export interface CandidateHere {
  set: PackSet;
  pumpSet: PumpSet;
  motorOutId: string | null;
  candidate: Candidate;
  /** Null: it would have to be bought. */
  motorId: string | null;
  unoffered: Unoffered | null;
  result: Result;
  drawing: MountDrawingProps;
  /** Its steps, figures and leads. */
  job: Job;
  about: About;
}

/** What the page asks the worker, and what it answers. */
export interface Asks {
  status: { in: Record<string, never>; out: Status };
  /** Those that are down, the last first. */
  home: { in: Record<string, never>; out: SetLine[] };
  find: { in: { typed: string }; out: SetLine[] };
  set: { in: { tag: string }; out: SetHere | null };
  motor: { in: { number: string }; out: MotorHere | null };
  label: { in: { code: string }; out: { thing: 'set' | 'motor'; name: string } | null };
  /** `whole`: the source that is told to its end. */
  ranked: { in: { tag: string; whole: Source | null }; out: RankedHere | null };
  /** Some of those that cannot go in, the nearest misses first. */
  misses: { in: { tag: string }; out: OfferLine[] | null };
  candidate: { in: { tag: string; number: string }; out: CandidateHere | null };
  shelves: { in: Record<string, never>; out: Pack['shelves'] };
  keep: {
    in: { waiting: Omit<Waiting, 'state' | 'told' | 'at'> };
    out: { outcome: 'kept' } | { outcome: 'refused'; says: string };
  };
  outbox: { in: Record<string, never>; out: Waiting[] };
  again: { in: { key: string }; out: null };
  drop: { in: { key: string }; out: null };
  draft: { in: { name: string }; out: unknown };
  keepDraft: { in: { name: string; value: unknown }; out: null };
  bringUp: { in: Record<string, never>; out: Status };
  wipe: { in: Record<string, never>; out: null };
  /** A case of the contract, judged; the answer is the very text that the command line prints. */
  assess: { in: { case: unknown }; out: string };
}
export type AskName = keyof Asks;
