import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import type { Verdict } from '@/app/look/words';
import { buyPath, candidatesPath, jobPath, swapFormPath } from '@/app/paths';
import type { Candidate, Unoffered } from '@/lib/matching/offer/candidate';
import { UNOFFERED_WORDS } from '../../unoffered-words';

/** What can be done with the candidate: record the swap, or ask for an offer. */
export function CandidateActions({
  tag,
  candidate,
  verdict,
  unoffered,
}: {
  tag: string;
  candidate: Candidate;
  verdict: Verdict;
  unoffered: Unoffered | null;
}) {
  const { id } = candidate.motor;
  if (unoffered !== null)
    return (
      <>
        <p className="mt-6 border-ink border-t-2 pt-3">{UNOFFERED_WORDS[unoffered]}</p>
        <ActionBar>
          <Action href={candidatesPath(tag)}>What can go in?</Action>
        </ActionBar>
      </>
    );
  if (candidate.from === 'buy')
    return (
      <ActionBar>
        <Action href={buyPath(tag, id)}>Purchase specification</Action>
      </ActionBar>
    );
  if (verdict === 'unsuitable')
    return (
      <ActionBar>
        <Action href={candidatesPath(tag)}>What else can go in?</Action>
        <Action href={swapFormPath(tag, id)} second>
          It went in all the same
        </Action>
      </ActionBar>
    );
  return (
    <ActionBar>
      <Action href={swapFormPath(tag, id)}>Record the swap</Action>
      <Action href={jobPath(tag, id)} second>
        Job sheet
      </Action>
    </ActionBar>
  );
}
