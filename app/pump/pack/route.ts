import { z } from 'zod';
import { askedBy } from '@/app/api/v1/asked-by';
import { answer, problem } from '@/app/api/v1/problem';
import { querySent } from '@/app/api/v1/query-sent';
import { hasGoneIdle } from '@/lib/auth/actor';
import type { Pack, PackRefused } from '@/lib/offline/pack';
import { packSince } from '@/lib/register/queries/pack';

const asked = z.strictObject({ since: z.string().max(200).optional(), page: z.string().max(400).optional() });

/**
 * Whose session was ended, wherever that was, has their pack wiped (S12). One that only went unused for hours keeps it: the
 * phone may be on the way to a pump. A network that fails says no such thing.
 */
const signedOut = async (headers: Headers) => ({ wipe: !(await hasGoneIdle(headers)) }) satisfies Partial<PackRefused>;

/** The next page is told before this one is read (RFC 8288): it can be asked for meanwhile. */
const nextOf = ({ next }: Pack): Record<string, string> =>
  next === null ? {} : { link: `<?page=${encodeURIComponent(next)}>; rel="next"` };

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
      if (pack !== null) return answer(pack, 200, nextOf(pack));
      const wrong = { path: 'page', value: null, says: 'is of no answer of this register: begin without it' };
      return problem(422, 'The pages no longer go on.', [wrong]);
    },
    { signedOut },
  );
