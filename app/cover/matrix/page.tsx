import type { Metadata } from 'next';
import Link from 'next/link';
import { areas } from '@/lib/register/queries/areas';
import { coverMatrix } from '@/lib/register/queries/cover-matrix';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../../answered';
import { coverAsked, questionWith } from '../../lists/asked-for';
import { NotReadNote } from '../../lists/not-read-note';
import { PrintedLine } from '../../lists/printed-line';
import { Mark } from '../../look/mark';
import { SectionHead } from '../../look/section-head';
import { Sheet } from '../../look/sheet';
import { VERDICT_WORDS } from '../../look/words';
import { personOf, whoMay } from '../../who-is-here';
import { askedWords, CoverFilters, readOf } from '../cover-filters';
import { CoverWays } from '../cover-ways';
import { MatrixTable } from './matrix-table';

export const metadata: Metadata = { title: 'Cover as a matrix' };

/** As much as is read at a desk, and on one sheet of paper across. */
const MOST = { rows: 40, columns: 20 };

/** Which kinds of shelf motor could stand in for which kinds of set, at one look. */
export default answered(async function CoverMatrixPage({ searchParams }: PageProps<'/cover/matrix'>) {
  const query = await searchParams;
  const question = questionWith('/cover/matrix', query, {});
  const actor = await whoMay('register.read', `/cover/matrix${question}`);
  const filter = coverAsked(query);
  const [places, { name, timezone }, matrix] = await Promise.all([
    areas(actor),
    siteSettings(actor),
    coverMatrix(actor, filter, MOST),
  ]);
  const { rows, columns, left, sets, motors } = matrix;
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/cover', words: 'Cover' }}>
      <h1 className="page">Cover as a matrix</h1>
      <p className="mt-2">
        Sets alike in frame system, shaft height and supply stand in one row, shelf motors alike in the same in one
        column. Where they meet: the best verdict of any such pair, and how many of the motors could go into at least
        one of the sets. Empty: none could. What goes into one set of a row need not go into another.
      </p>
      <CoverWays current="/cover/matrix" />
      <SectionHead title="Sets and shelf motors" aside={`${sets} sets, ${motors} motors`} />
      <CoverFilters path="/cover/matrix" filter={filter} areas={places} />
      <NotReadNote query={query} read={readOf(filter)} />
      <PrintedLine site={name} timezone={timezone} asked={askedWords(filter, places)} />
      {rows.length === 0 || columns.length === 0 ? (
        <p className="pt-3">{rows.length === 0 ? 'No set is like this.' : 'No motor stands on a shelf.'}</p>
      ) : (
        <>
          <ul className="matrix-key label">
            {(['straight-swap', 'swap-with-work', 'check-first'] as const).map((verdict) => (
              <li className="with-mark" key={verdict}>
                <Mark verdict={verdict} size="small" /> {VERDICT_WORDS[verdict]}
              </li>
            ))}
          </ul>
          <MatrixTable rows={rows} columns={columns} />
        </>
      )}
      <LeftOut left={left} />
      <p className="below-table screen-only">
        <Link className="to" href={`/cover${question}`}>
          The same sets as a list, one a line
        </Link>
      </p>
    </Sheet>
  );
});

/** What the matrix does not show. */
function LeftOut({ left }: { left: Awaited<ReturnType<typeof coverMatrix>>['left'] }) {
  if (left.rows === 0 && left.columns === 0) return null;
  return (
    <p className="pt-3">
      {left.rows > 0 && `Left out: ${told(left.rows, 'row')} with ${told(left.sets, 'set')}, those with fewest sets. `}
      {left.columns > 0 &&
        `Left out: ${told(left.columns, 'column')} with ${told(left.motors, 'motor')}, those that go into fewest of these sets.`}
    </p>
  );
}

const told = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;
