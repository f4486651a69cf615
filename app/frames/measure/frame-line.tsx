import Link from 'next/link';
import { framePath } from '@/app/paths';
import type { Units } from '@/lib/fields/field';
import type { FrameFound } from '@/lib/standards/measured/frames-measured';
import type { Misfit } from '@/lib/standards/measured/misfit';
import { nameOf } from '@/lib/standards/measured/name-of';
import { differenceText, lengthText, MEASURED_WORDS, namesText } from './measured-words';

/** One frame: every reading beside its figure, what was not measured of it, and the way on. */
export function FrameLine({
  found: { option, misfits, worst, unmeasured },
  units,
  enter,
}: {
  found: FrameFound;
  units: Units;
  /** Where a motor with this frame is entered; null: not by this person, or not this frame. */
  enter: string | null;
}) {
  const of = option.system === 'NEMA' ? 'NEMA MG 1' : 'IEC 60072-1';
  return (
    <li className="frame-found">
      <div className="frame-found-head">
        <Link className="to line-name" href={framePath(option.frame)}>
          <bdi>{nameOf(option)}</bdi>
        </Link>
        <span className="label">{of}</span>
      </div>
      <table className="find">
        <caption className="vh">{nameOf(option)}: what was measured and its own figures</caption>
        <thead>
          <tr>
            <td />
            <th scope="col" className="c-have">
              have
            </th>
            <th scope="col" className="c-have">
              need
            </th>
            <th scope="col" className="c-difference">
              difference
            </th>
          </tr>
        </thead>
        <tbody>
          {misfits.map((misfit) => (
            <MisfitRow key={misfit.name} misfit={misfit} units={units} />
          ))}
        </tbody>
      </table>
      {worst === 0 && (
        <p className="label">
          {unmeasured.length === 0
            ? 'Everything that the standard fixes was measured.'
            : `Not measured yet: ${namesText(unmeasured).toLowerCase()}.`}
        </p>
      )}
      {enter !== null && (
        <p>
          <Link className="to" href={enter}>
            Enter a motor with this frame<span className="vh">, {nameOf(option)}</span>
          </Link>
        </p>
      )}
    </li>
  );
}

function MisfitRow({ misfit: { name, have, need, difference, beyond }, units }: { misfit: Misfit; units: Units }) {
  const isOff = beyond !== null && beyond > 0;
  return (
    <tr className={isOff ? 'urgent' : undefined}>
      <th scope="row">
        {MEASURED_WORDS[name].label}
        {isOff && <span className="label"> does not agree</span>}
      </th>
      <td className="figure">{bare(have, units)}</td>
      <td className="figure">{need === null ? <abbr title="not fixed by the standard">–</abbr> : bare(need, units)}</td>
      <td className="figure difference">{difference === null ? 'not fixed' : differenceText(difference, units)}</td>
    </tr>
  );
}

const bare = (mm: number, units: Units) => lengthText(mm, units).replace(/ (mm|in)$/, '');
