import type { Prisma } from '@/lib/db/generated/client';
import { day } from '../motor-row';
import type { FoundDoubt } from './found-doubt';

/** What a person said who let a doubt stand. */
export interface AcceptanceNote {
  acceptanceId: string;
  reason: string;
  by: string;
  at: Date;
  /** The day on which it is raised again, YYYY-MM-DD; null: not before its figures change. */
  againOn: string | null;
}

export interface Acceptance extends AcceptanceNote {
  rule: string;
  thingId: string;
  figures: string;
}

export const ACCEPTANCE_ROW = { by: { select: { name: true } } } as const satisfies Prisma.AcceptanceInclude;

export function acceptanceOf(row: Prisma.AcceptanceGetPayload<{ include: typeof ACCEPTANCE_ROW }>): Acceptance {
  const { id, rule, thingId, figures, reason, by, at, againOn } = row;
  return { acceptanceId: id, rule, thingId, figures, reason, by: by.name, at, againOn: day(againOn) };
}

/** A doubt that stands; `before`: it was accepted, for other figures or until a day that has come. */
export interface OpenDoubt extends FoundDoubt {
  before: AcceptanceNote | null;
}

export interface AcceptedDoubt extends FoundDoubt {
  accepted: AcceptanceNote;
}

/** Parts doubts into those that stand and those a person accepted with these very figures. `today` is a day of the site. */
export function parted(
  found: readonly FoundDoubt[],
  acceptances: readonly Acceptance[],
  today: string,
): { open: OpenDoubt[]; accepted: AcceptedDoubt[] } {
  const byDoubt = new Map(acceptances.map((one) => [`${one.rule} ${one.thingId}`, one]));
  const open: OpenDoubt[] = [];
  const accepted: AcceptedDoubt[] = [];
  for (const one of found) {
    const known = byDoubt.get(`${one.doubt.rule} ${one.thingId}`);
    if (known === undefined) {
      open.push({ ...one, before: null });
      continue;
    }
    const { rule: _r, thingId: _t, figures, ...note } = known;
    const isHeld = figures === one.doubt.figures && (note.againOn === null || note.againOn > today);
    if (isHeld) accepted.push({ ...one, accepted: note });
    else open.push({ ...one, before: note });
  }
  return { open, accepted };
}
