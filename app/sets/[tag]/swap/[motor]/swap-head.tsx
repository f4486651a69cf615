import { Mark } from '@/app/look/mark';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { hoursText, VERDICT_WORDS } from '@/app/look/words';
import type { Result } from '@/lib/matching/assess';

/** What comes out, what goes in, and how that is judged. `day`: as people read it; a phone, whose clock may be wrong, shows none. */
export function SwapHead({
  tag,
  out,
  into,
  day,
  result: { verdict, hours },
  judged,
}: {
  tag: string;
  /** Null: the set stands empty. */
  out: string | null;
  into: string;
  day?: string;
  result: Result;
  /** Where and when it was judged. */
  judged: string;
}) {
  return (
    <>
      <TitleBlock
        small
        tag={tag}
        name="Record the swap"
        cells={[
          { label: 'Out', value: out === null ? 'no motor' : <Tag>{out}</Tag> },
          {
            label: 'In',
            value: (
              <b>
                <Tag>{into}</Tag>
              </b>
            ),
          },
          ...(day === undefined ? [] : [{ label: 'Date', value: day }]),
        ]}
      />
      <p className="flex items-center gap-3 pt-4">
        <Mark verdict={verdict} />
        <span>
          <b>{VERDICT_WORDS[verdict]}</b>
          {verdict !== 'unsuitable' && `, ${hoursText(hours)}`}
          <br />
          <span className="label">{judged}</span>
        </span>
      </p>
    </>
  );
}
