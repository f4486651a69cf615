import { z } from 'zod';
import { askedBy } from '@/app/api/v1/asked-by';
import { answer, problem } from '@/app/api/v1/problem';
import { querySent } from '@/app/api/v1/query-sent';
import type { PackRefused } from '@/lib/offline/pack';
import { packSince } from '@/lib/register/queries/pack';

const asked = z.strictObject({ since: z.string().max(200).optional(), page: z.string().max(400).optional() });

/** Whose session has ended, wherever it was ended, has their pack wiped (S12). A network that fails says no such thing. */
const signedOut = { wipe: true } satisfies Partial<PackRefused>;

/** The site of who is signed in, as their phone keeps it: whole, or what has changed since a cursor. */
export const GET = (request: Request) =>
  askedBy(
    request,
    'register.read',
    async (actor) => {
      const query = querySent(request, asked);
      if (query instanceof Response) return query;
      const { since = null, page = null } = query;
      const pack = await packSince(actor, { since, page });
      if (pack !== null) return answer(pack);
      const wrong = { path: 'page', value: null, says: 'is of no answer of this register: begin without it' };
      return problem(422, 'The pages no longer go on.', [wrong]);
    },
    { signedOut },
  );
