import { written } from '@/app/paths';
import { frameAnswer } from '@/lib/standards/frame-answer';
import { askedBy } from '../../asked-by';
import { frameOp } from '../../operations/judging';
import { answer, problem } from '../../problem';
import { querySent } from '../../query-sent';

/** The mounting of a frame, as `npm run frame` tells it. */
export const GET = (request: Request, { params }: { params: Promise<{ frame: string }> }) =>
  askedBy(request, frameOp.action, async () => {
    const asked = querySent(request, frameOp.query);
    if (asked instanceof Response) return asked;
    const { mounting = null, poles = null, system = null } = asked;
    const found = frameAnswer(written((await params).frame), { mounting, poles, system });
    if (found.ok) return answer(found.value);
    const isUnknown = found.problems.some(({ path }) => path === 'frame');
    return problem(
      isUnknown ? 404 : 422,
      isUnknown ? 'No such frame.' : 'The question contradicts itself.',
      found.problems,
    );
  });
