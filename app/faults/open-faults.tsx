import Link from 'next/link';
import type { OpenFault } from '@/lib/register/queries/set-by-tag';
import { standingText } from '../lasted';
import { SectionHead } from '../look/section-head';
import { faultPath } from '../paths';

/** The faults open at a set: since when it stands, what was seen, and who told it. */
export function OpenFaults({ faults, timezone }: { faults: readonly OpenFault[]; timezone: string }) {
  return (
    <section id="open-faults">
      <SectionHead title={faults.length === 1 ? 'Fault open' : 'Faults open'} />
      <ul className="history">
        {faults.map(({ id, says, at, by }) => (
          <li key={id}>
            <p>
              <b>Failed</b> {standingText(at, timezone)}
            </p>
            <p>
              <Link className="to" href={faultPath(id)}>
                <bdi>{says}</bdi>
              </Link>
            </p>
            <p className="label">
              told by <bdi>{by}</bdi>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
