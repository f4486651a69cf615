import { Hours } from './hours';
import { Mark } from './mark';
import { VERDICT_WORDS, type Verdict } from './words';

/** Mark, words, hours. Hours are null where the verdict leaves nothing to do. */
export function VerdictLine({ verdict, hours }: { verdict: Verdict; hours: number | null }) {
  return (
    <section className="verdict">
      <Mark verdict={verdict} size="large" />
      <h2>{VERDICT_WORDS[verdict]}</h2>
      <Hours hours={hours} />
    </section>
  );
}
