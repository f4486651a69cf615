import { quantitiesOf, valuesOf } from '@/app/sets/[tag]/swap/[motor]/read-swap-form';
import { requestOf } from '@/app/sets/[tag]/swap/[motor]/request-of';
import { problemsOf } from '@/app/sets/[tag]/swap/[motor]/swap-problems';
import type { SwapState } from '@/app/sets/[tag]/swap/[motor]/swap-state';
import type { WorkItem } from '@/app/sets/[tag]/work-items';
import type { SwapBody } from '@/lib/offline/outbox';
import type { CandidateHere } from './asked';
import { keepMessage } from './keep-message';

/** Keeps the swap as told in the form, to go up when there is a network. `asked`: it is kept. Nothing typed is lost. */
export async function keepSwap(
  form: FormData,
  { set, pumpSet, motorOutId, candidate, result, about }: CandidateHere,
  motorInId: string,
  work: readonly WorkItem[],
): Promise<SwapState> {
  const values = valuesOf(form);
  const { quantities, problems } = quantitiesOf(values);
  const fromSetId = candidate.from === 'set' ? candidate.stops.setId : null;
  const all = [...problemsOf(values, { motorOutId, fromSetId, verdict: result.verdict }), ...problems];
  if (all.length > 0) return { outcome: 'refused', values, problems: all };
  const told = { setId: set.id, motorInId, motorOutId, fromSetId };
  const { key, ...request } = requestOf(values, quantities, told, work, result.findings);
  const out = pumpSet.failed === null ? '' : `, ${pumpSet.failed.id} out`;
  const kept = await keepMessage(about, {
    kind: 'swap',
    key,
    tag: set.tag,
    says: `${candidate.motor.id} in${out}. ${request.why}`,
    // What the form may hold was just held against its problems.
    body: {
      ...(request as Omit<SwapBody, 'doneAt' | 'judged'>),
      doneAt: new Date().toISOString(),
      judged: { verdict: result.verdict, hours: result.hours, at: about.at },
    },
  });
  return kept.outcome === 'kept' ? { outcome: 'asked', values } : { outcome: 'away', values, says: kept.says };
}
