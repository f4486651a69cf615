import { z } from 'zod';
import { SEEN } from '@/lib/plant/fault';
import { THOUGH_REFUSED, told } from '@/lib/plant/told';

const id = z.uuid();
const moment = told(z.iso.datetime({ offset: true }));

/** Several lines of a person's own words. */
const words = z.string().trim().min(1).max(2_000);

/** What a person says of a set that has failed. The register adds who and when. */
export const faultRequest = z
  .strictObject({
    /** Made once by whoever tells it: the same key is noted once, however often it is sent. */
    key: told(id),
    setId: id,
    seen: z.array(z.enum(SEEN)).max(SEEN.length),
    says: told(words),
    /** The phone's own moment, kept as a note: its clock may be wrong. */
    seenAt: moment,
  })
  .refine(({ seen, says }) => says !== null || !Array.isArray(seen) || seen.length > 0, {
    path: ['seen'],
    error: 'must tell what was seen, or say it in words',
    ...THOUGH_REFUSED,
  });

export type FaultRequest = z.output<typeof faultRequest>;

/** What a person says who has put a set right where it stands: of one fault, by its id or its key, or of all at the set. */
export const closeRequest = z
  .strictObject({
    setId: told(id),
    faultId: told(id),
    faultKey: told(id),
    /** What was done. */
    how: words,
    doneAt: moment,
  })
  .refine(({ setId, faultId, faultKey }) => [setId, faultId, faultKey].filter((one) => one !== null).length === 1, {
    path: ['faultId'],
    error: 'must name one fault, or the set',
    ...THOUGH_REFUSED,
  });

export type CloseRequest = z.output<typeof closeRequest>;
