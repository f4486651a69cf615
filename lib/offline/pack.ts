import type { Verdict } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { Place } from '@/lib/plant/whereabouts';

/** Which shape a pack has: a phone that keeps one of another shape asks for all of it. */
export const PACK_VERSION = 1;

/** A fault still open. `says`: what was seen and said, as one line (lib/plant/fault). `at`: ISO moment. */
export interface PackFault {
  id: string;
  says: string;
  at: string;
  by: string;
}

/** A line of a set's history. Moments are ISO texts; motors are told by their plant numbers. */
export type PackLine =
  | {
      kind: 'swap';
      id: string;
      at: string;
      by: string;
      /** The set that was given the motor: another one, where this set's motor was taken for it. */
      setTag: string;
      /** The set that gave its motor; null: it came from a shelf. */
      fromSetTag: string | null;
      motorIn: string;
      /** Null: the set stood empty. */
      motorOut: string | null;
      /** at-repair, on-shelf or scrapped. */
      outTo: string | null;
      why: string;
      /** Null: put in without a judgement. */
      verdict: Verdict | null;
      hours: number | null;
    }
  | {
      kind: 'fault';
      id: string;
      at: string;
      by: string;
      motor: string | null;
      says: string;
      /** Null: it is still open. */
      closedAt: string | null;
      /** swap or repair; null: it is open, or was closed before this was asked. */
      closedBy: string | null;
      /** What was done, when it was put right where it stands. */
      closedHow: string | null;
    };

/** A set with what its page tells. The motor in it is the one whose `setId` names it. */
export interface PackSet {
  id: string;
  tag: string;
  /** What stands on its label. */
  code: string;
  service: string | null;
  area: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality: number | null;
  pump: { description: string; kind: string | null; maker: string | null } | null;
  note: string | null;
  set: Omit<PumpSet, 'failed'>;
  /** Those still open, newest first. */
  faults: PackFault[];
  /** The last of what happened at it, newest first. */
  history: PackLine[];
  /** It is kept so that its label can still be read; nothing is done at it any more. */
  retired: boolean;
}

/** A motor with where it is. `store` and `shelf` are told on a shelf. */
export interface PackMotor {
  id: string;
  /** Its plant number. */
  number: string;
  code: string;
  maker: string | null;
  serial: string | null;
  condition: string | null;
  rewinds: number | null;
  place: Place;
  setId: string | null;
  shelfId: string | null;
  store: string | null;
  shelf: string | null;
  motor: Motor;
  retired: boolean;
}

/**
 * What a phone is told of its site, as a page of an answer. Pages are asked for until `next` is null; records of a later
 * page stand for those of an earlier one. Then all of them stand for what the phone had (`isWhole`), or record by record
 * (by id) for those it had, and the last page's `cursor` is kept: it is what the phone has.
 */
export interface Pack {
  version: typeof PACK_VERSION;
  siteId: string;
  userId: string;
  site: { name: string; timezone: string; settings: SiteSettings };
  person: { name: string; role: string; units: 'metric' | 'us' };
  /** The server's moment, ISO: as the plant stood then. */
  at: string;
  /** Sent with the next question, which is then answered with what has changed since. */
  cursor: string;
  /** These pages are the whole plant, and what the phone had is dropped. */
  isWhole: boolean;
  sets: PackSet[];
  motors: PackMotor[];
  /** Every shelf in use: few enough to be told anew each time. */
  shelves: { shelfId: string; store: string; shelf: string }[];
  /** Sent as `page` for the next page; null: there is none. */
  next: string | null;
}

/** What is answered instead when nobody is signed in any more: the pack is wiped. Messages that wait are kept. */
export interface PackRefused {
  status: number;
  title: string;
  wipe?: boolean;
}
