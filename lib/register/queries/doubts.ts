import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { RULES, type RuleId } from '@/lib/plausibility/doubt';
import { ACCEPTANCE_ROW, type AcceptedDoubt, acceptanceOf, type OpenDoubt, parted } from '../doubts/acceptances';
import { siteDoubts } from '../doubts/site-doubts';

/** As many acceptances of a site as are read, and as many accepted doubts as one answer shows. */
const MOST_ACCEPTANCES = 20_000;
const MOST_ACCEPTED = 200;

export interface RuleCount {
  rule: RuleId;
  wrong: number;
  doubtful: number;
  accepted: number;
}

export interface SiteDoubts {
  /** Those that stand, wrong ones first, then in the order of the rules: one page of them. */
  open: OpenDoubt[];
  /** How many stand in all, as asked for. */
  all: number;
  accepted: AcceptedDoubt[];
  acceptedAll: number;
  /** Every rule that raised something, whatever is asked for. */
  counts: RuleCount[];
  /** False: the site has more records than are looked at. */
  isAll: boolean;
}

/** What cannot be right at the site, what was accepted apart. `today` is a day of the site. */
export async function doubts(
  actor: Actor,
  { rule, today }: { rule: RuleId | null; today: string },
  { page, perPage }: { page: number; perPage: number },
): Promise<SiteDoubts> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const [{ found, isAll }, rows] = await Promise.all([
    siteDoubts(siteId),
    db.acceptance.findMany({
      where: { siteId, withdrawnAt: null },
      include: ACCEPTANCE_ROW,
      orderBy: [{ at: 'desc' }, { id: 'asc' }],
      take: MOST_ACCEPTANCES,
    }),
  ]);
  const { open, accepted } = parted(found, rows.map(acceptanceOf), today);
  const counts = RULES.map((id): RuleCount => {
    const own = open.filter(({ doubt }) => doubt.rule === id);
    const wrong = own.filter(({ doubt }) => doubt.grade === 'wrong').length;
    const apart = accepted.filter(({ doubt }) => doubt.rule === id).length;
    return { rule: id, wrong, doubtful: own.length - wrong, accepted: apart };
  });
  const isAsked = ({ doubt }: { doubt: { rule: RuleId } }) => rule === null || doubt.rule === rule;
  const asked = open.filter(isAsked).sort(worstFirst);
  const apart = accepted.filter(isAsked).sort((a, b) => b.accepted.at.getTime() - a.accepted.at.getTime());
  const take = Math.min(perPage, 500);
  return {
    open: asked.slice((page - 1) * take, page * take),
    all: asked.length,
    accepted: apart.slice(0, MOST_ACCEPTED),
    acceptedAll: apart.length,
    counts: counts.filter(({ wrong, doubtful, accepted: some }) => wrong + doubtful + some > 0),
    isAll,
  };
}

const ORDER = new Map<RuleId, number>(RULES.map((rule, i) => [rule, i]));

/** Wrong before doubtful, then in the order of the rules; what is equal keeps the order of the names. */
const worstFirst = (a: OpenDoubt, b: OpenDoubt): number =>
  Number(b.doubt.grade === 'wrong') - Number(a.doubt.grade === 'wrong') ||
  (ORDER.get(a.doubt.rule) as number) - (ORDER.get(b.doubt.rule) as number);
