import { z } from 'zod';

/**
 * How far a phone has come with the pages of an answer. The pages of a round are read one after the other while people
 * work: what changes meanwhile may be in them or not. So behind a round of several pages there is another, of what has
 * changed since the first began, until one fits on a page: that page and all before it then stand at one moment.
 */
export interface PlaceInPack {
  /** As in a cursor, and as they were when the first page was read. */
  register: string;
  nameless: number;
  isWhole: boolean;
  /** Only what was changed in this transaction or later; null: everything. */
  from: bigint | null;
  /** The oldest transaction at work when the round began; null: it begins now. */
  begun: bigint | null;
  /** Sets come first, each kind in the order of its ids; null: from the first. */
  of: 'set' | 'motor';
  after: string | null;
}

const transaction = z.string().regex(/^\d{1,18}$/);
const place = z.tuple([
  z.uuid(),
  z.int().nonnegative(),
  z.boolean(),
  transaction.nullable(),
  transaction.nullable(),
  z.enum(['set', 'motor']),
  z.uuid().nullable(),
]);

export function placeText({ register, nameless, isWhole, from, begun, of, after }: PlaceInPack): string {
  const told: z.input<typeof place> = [register, nameless, isWhole, textOf(from), textOf(begun), of, after];
  return Buffer.from(JSON.stringify(told)).toString('base64url');
}

/** Null: it is none of ours. */
export function placeOf(text: string): PlaceInPack | null {
  const told = place.safeParse(jsonOf(Buffer.from(text, 'base64url').toString()));
  if (!told.success) return null;
  const [register, nameless, isWhole, from, begun, of, after] = told.data;
  return { register, nameless, isWhole, from: numberOf(from), begun: numberOf(begun), of, after };
}

const textOf = (number: bigint | null) => (number === null ? null : String(number));
const numberOf = (text: string | null) => (text === null ? null : BigInt(text));

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
