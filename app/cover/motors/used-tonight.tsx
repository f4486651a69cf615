import Link from 'next/link';
import type { CoverOfMotors } from '@/lib/register/queries/cover-of-motors';
import { SectionHead } from '../../look/section-head';
import { hoursText, VERDICT_WORDS } from '../../look/words';
import { candidatesPath } from '../../paths';

/** As many sets as are told one by one. */
const SHOWN = 50;

/** What would be left for the sets of one motor if it were taken from the shelf tonight, the barest first. */
export function UsedTonight({ number, used }: { number: string; used: CoverOfMotors['used'] }) {
  return (
    <section id="used">
      <SectionHead title={<>If {number} is used tonight</>} />
      {used === null ? (
        <p className="pt-3">
          <bdi>{number}</bdi> is on no shelf of the site, or is not to be offered: its use takes cover from no set.
        </p>
      ) : (
        <>
          <p className="pt-3">
            {used.line.leavesNone === 0
              ? 'No set would be left with nothing.'
              : `${used.line.leavesNone} of the ${used.sets.length} sets it protects would be left with nothing.`}{' '}
            {used.line.leavesOne} would have a single shelf motor left.
          </p>
          <ul className="lines">
            {used.sets.slice(0, SHOWN).map(({ of, fit, left }) => (
              <li key={of.setId} className={left === 0 ? 'urgent' : undefined}>
                <p className="line-name">
                  <Link href={candidatesPath(of.tag)}>
                    <bdi>{of.tag}</bdi>
                  </Link>
                </p>
                <span className="line-aside">{left === 0 ? <b>none left</b> : `${left} left`}</span>
                <p className="line-below">
                  {of.criticality === null ? 'criticality not told' : `criticality ${of.criticality} of 4`};{' '}
                  {VERDICT_WORDS[fit.verdict].toLowerCase()}, {hoursText(fit.hours)}
                </p>
              </li>
            ))}
          </ul>
          {used.sets.length > SHOWN && <p className="label pt-2">and {used.sets.length - SHOWN} more, less bare</p>}
        </>
      )}
    </section>
  );
}
