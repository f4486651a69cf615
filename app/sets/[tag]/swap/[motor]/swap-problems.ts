import type { Verdict } from '@/lib/matching/verdict';
import type { FormProblem, SwapValues } from './swap-state';

/** What is missing in the form, or contradicts itself, field by field. */
export function problemsOf(
  values: SwapValues,
  { motorOutId, fromSetId, verdict }: { motorOutId: string | null; fromSetId: string | null; verdict: Verdict },
): FormProblem[] {
  const problems: FormProblem[] = [];
  const missing = (path: string, says: string) => problems.push({ path, says });
  if (values.why === '' && values.whyWords === '') missing('why', 'Say why the motor was changed.');
  if (`${values.why}: ${values.whyWords}`.length > 200)
    missing('whyWords', 'Say why in fewer words: at most 150 letters. The note has room for more.');
  if (motorOutId !== null && values.outTo === '') missing('outTo', 'Say where the motor that came out goes.');
  if (motorOutId !== null && values.outTo === 'on-shelf' && values.shelfId === '')
    missing('shelfId', 'Say on which shelf it goes.');
  if (fromSetId !== null && values.stops !== 'yes') missing('stops', 'Say that the other set may stop.');
  if (verdict === 'unsuitable' && values.note === '')
    missing('note', 'The judgement says unsuitable: note who decided otherwise, and why.');
  if (values.note.length > 2_000) missing('note', 'The note has at most 2,000 characters.');
  return problems;
}
