import { today } from '@/app/moment';
import { isWorse } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import { groupPurchase, type PurchaseOption, type Served, specificationOf } from '@/lib/purchase/group/group-purchase';
import { groupOfSets } from '@/lib/register/queries/group-of-sets';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { askedBy } from '../asked-by';
import { purchaseOp } from '../operations/purchase';
import { answer, problem } from '../problem';
import { querySent } from '../query-sent';

export const GET = (request: Request) =>
  askedBy(request, purchaseOp.action, async (actor) => {
    const asked = querySent(request, purchaseOp.query);
    if (asked instanceof Response) return asked;
    const [{ sets, unknown }, { settings, timezone }] = await Promise.all([
      groupOfSets(actor, { tags: asked.tag, ids: [] }),
      siteSettings(actor),
    ]);
    if (unknown.length > 0) return problem(404, `There is no such set at this site: ${unknown.join(', ')}.`);
    const asOf = today(timezone);
    const { options, unanswered } = groupPurchase(sets, settings, asOf);
    const chosen = asked.rating === undefined ? options[0] : options.find(({ motor }) => motor.id === asked.rating);
    if (chosen === undefined) return problem(404, 'No such standard rating answers these sets.');
    const { motor, contradictions, served } = chosen;
    return answer({
      ...{ sets: sets.map(({ tag }) => tag), unanswered, options: options.map(optionOf), asked: asSentMotor(motor) },
      ...{ groups: specificationOf(sets, chosen, asOf), contradictions, served: served.map(servedOf) },
    });
  });

const optionOf = ({ motor, contradictions, served }: PurchaseOption) => ({
  id: motor.id,
  serves: served.filter(({ result }) => result.verdict !== 'unsuitable').length,
  contradictions: contradictions.length,
});

const servedOf = ({ tag, result: { verdict, hours, findings } }: Served) => ({
  ...{ tag, verdict, hours },
  findings: findings.filter(({ grade }) => isWorse(grade, 'note')),
});

/** As `POST /assess` takes it: power in hp or in kW, never both. */
const asSentMotor = (motor: Motor) => ({
  ...motor,
  ratings: motor.ratings.map((row) => (row.hp === null ? row : { ...row, kw: null })),
});
