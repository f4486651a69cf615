import type { Readings } from '@/lib/job/readings';
import type { CriterionId } from '@/lib/matching/finding';
import type { Verdict } from '@/lib/matching/verdict';
import type { Seen } from '@/lib/plant/fault';
import type { Problem } from '@/lib/plant/reading';
import type { WorkId } from '@/lib/plant/work';

/** Today's version of every message. A message is sent in the version it was written in; one back is taken. */
export const OUTBOX_VERSION = 2;

/** How the phone judged, from a pack that may have been old. */
export interface JudgedAtPump {
  verdict: Verdict;
  hours: number | null;
  /** The pack's moment, ISO. */
  at: string;
}

/** A swap as it was told at the pump. Ids are the register's. */
export interface SwapBody {
  setId: string;
  motorInId: string;
  /** Null: the set stood empty. */
  motorOutId: string | null;
  /** The set the motor was taken from; null: it came from a shelf. */
  fromSetId: string | null;
  /** Null only when no motor came out. */
  outTo: { place: 'on-shelf'; shelfId: string } | { place: 'at-repair' } | { place: 'scrapped' } | null;
  why: string;
  note: string | null;
  workDone: { id: WorkId; what: string; hours: number }[];
  checks: { criterion: CriterionId; says: string }[];
  insulationMohm: number | null;
  overloadA: number | null;
  shimsPresentMm: number | null;
  /** The phone's own moment, ISO: kept as a note, since its clock may be wrong. */
  doneAt: string | null;
  /** What was read and ticked at the pump; null: nothing was. */
  readings: Readings | null;
  /** Null: it was put in without a judgement. */
  judged: JudgedAtPump | null;
}

/** "It has failed". The message's key is the fault's. */
export interface FaultBody {
  setId: string;
  seen: Seen[];
  /** Null only when something was seen. */
  says: string | null;
  /** The phone's own moment, ISO: kept as a note. */
  seenAt: string | null;
}

/** "It runs again", with the motor that stood there: of a fault by its id, or by the key of the message that told it. */
export interface FaultClosedBody {
  faultId: string | null;
  faultKey: string | null;
  /** What was done. */
  how: string;
  doneAt: string | null;
}

/** Readings of a swap that was recorded before: by its id, or by the key of the message that told it. */
export interface ReadingsBody {
  swapId: string | null;
  swapKey: string | null;
  readings: Readings;
  /** The phone's own moment, ISO: kept as a note. */
  takenAt: string | null;
}

/** A photograph of a fault, by the key of the message that told it; it is sent after that one. */
export interface PictureBody {
  faultKey: string;
  caption: string | null;
  /** A JPEG, PNG or WebP picture in base64, made small by the phone. */
  base64: string;
}

/** What each kind of message says in today's version. */
export interface OutboxBodies {
  swap: SwapBody;
  fault: FaultBody;
  'fault-closed': FaultClosedBody;
  readings: ReadingsBody;
  picture: PictureBody;
}
export type OutboxKind = keyof OutboxBodies;

/** One message. `key` is made once by the phone: however often it is sent, it is carried out once. */
export interface OutboxMessage<K extends OutboxKind = OutboxKind> {
  version: typeof OUTBOX_VERSION;
  kind: K;
  key: string;
  /** Who wrote it, and of which site: it is never sent as another. */
  userId: string;
  siteId: string;
  body: OutboxBodies[K];
}

/**
 * What came of a message, by the `outcome` of the answer. An answer without one is no word on it: from 500 on it is sent
 * again later; 400, 413 and 415 are faults of the program, which no sending mends.
 */
export type OutboxAnswer =
  /** 200: it is in the register. `isRepeat`: it was there already. */
  | { outcome: 'saved'; id: string; isRepeat: boolean }
  /** 409: somebody was first. What was told is in the audit, so that the desk sees it. */
  | {
      outcome: 'taken';
      what: 'motor' | 'set';
      /** Null when it was not a person. */
      by: string | null;
      /** ISO moment. */
      at: string | null;
      /** The set the motor now stands in, or the set that was filled; null: the motor stands in none. */
      setTag: string | null;
      /** The motor in question, or the one now in the set; null: none is. */
      motorNumber: string | null;
    }
  /** 422: it cannot be recorded as it stands. Mended, it may have the same key. */
  | { outcome: 'refused'; problems: Problem[] }
  /** 401: it is kept until who wrote it signs in again. */
  | { outcome: 'signed-out' }
  /** 403: it was written by somebody else, or for another site. */
  | { outcome: 'not-theirs' };
