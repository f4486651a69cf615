import { today } from '@/app/moment';
import { written } from '@/app/paths';
import { rankedCandidates } from '@/app/sets/[tag]/candidates/ranked-candidates';
import type { JudgedCandidate } from '@/lib/matching/offer/candidate';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { askedBy } from '../../../asked-by';
import { findingsOp } from '../../../operations/judging';
import { answer, problem } from '../../../problem';
import { querySent } from '../../../query-sent';

export const GET = (request: Request, { params }: { params: Promise<{ tag: string }> }) =>
  askedBy(request, findingsOp.action, async (actor) => {
    const asked = querySent(request, findingsOp.query);
    if (asked instanceof Response) return asked;
    const known = await setByTag(actor, written((await params).tag));
    if (known === null) return problem(404, 'There is no such set at this site.');
    const { settings, timezone } = await siteSettings(actor);
    const { fits, unsuitableCount } = await rankedCandidates(actor, known, settings, today(timezone));
    const candidates = [...fits.shelf, ...fits.set, ...fits.buy].slice(0, asked.limit ?? 50).map(candidateOf);
    return answer({ tag: known.row.tag, candidates, unsuitableCount });
  });

const candidateOf = ({ candidate, result }: JudgedCandidate) => ({
  from: candidate.from,
  motorId: candidate.from === 'shelf' ? candidate.at.motorId : null,
  stops: candidate.from === 'set' ? candidate.stops.tag : null,
  result,
});
