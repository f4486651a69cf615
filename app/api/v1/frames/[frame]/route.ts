import { z } from 'zod';
import { written } from '@/app/paths';
import { read } from '@/lib/plant/reading';
import { frameAnswer } from '@/lib/standards/frame-answer';
import { askedBy } from '../../asked-by';
import { answer, problem } from '../../problem';

const asked = z.strictObject({
  mounting: z.string().max(40).optional(),
  poles: z.coerce.number({ error: 'must be an even number from 2 up' }).optional(),
  system: z
    .string()
    .toUpperCase()
    .pipe(z.enum(['NEMA', 'IEC']))
    .optional(),
});

/** The mounting of a frame, as `npm run frame` tells it. */
export const GET = (request: Request, { params }: { params: Promise<{ frame: string }> }) =>
  askedBy(request, 'frame.read', async () => {
    const query = new URL(request.url).searchParams;
    const twice = [...new Set(query.keys())].filter((key) => query.getAll(key).length > 1);
    if (twice.length > 0)
      return problem(
        422,
        'The question is not understood.',
        twice.map((path) => ({ path, value: null, says: 'is there more than once' })),
      );
    const options = read(asked, Object.fromEntries(query));
    if (!options.ok) return problem(422, 'The question is not understood.', options.problems);
    const { mounting = null, poles = null, system = null } = options.value;
    const found = frameAnswer(written((await params).frame), { mounting, poles, system });
    if (found.ok) return answer(found.value);
    const isUnknown = found.problems.some(({ path }) => path === 'frame');
    return problem(
      isUnknown ? 404 : 422,
      isUnknown ? 'No such frame.' : 'The question contradicts itself.',
      found.problems,
    );
  });
