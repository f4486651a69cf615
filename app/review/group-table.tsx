import Link from 'next/link';
import type { ReviewSum } from '@/lib/review/list/grouped';
import type { Grouping } from '@/lib/review/list/review-filter';
import { type Query, questionWith } from '../lists/asked-for';
import { DataTable } from '../look/data-table';
import { kwhText, moneyText } from './review-words';

export interface ShownGroup {
  key: string;
  words: string;
  sum: ReviewSum;
}

/** How many findings each group has and what they take in a year; a group leads to its own. */
export function GroupTable({
  by,
  groups,
  sum,
  query,
  currency,
}: {
  by: Grouping;
  groups: readonly ShownGroup[];
  sum: ReviewSum;
  query: Query;
  currency: string | null;
}) {
  return (
    <DataTable name={by === 'area' ? 'Findings by area' : 'Findings by what was found'}>
      <thead>
        <tr>
          <th scope="col">{by === 'area' ? 'Area' : 'Found'}</th>
          <th scope="col" className="num">
            Open
          </th>
          <th scope="col" className="num">
            Accepted
          </th>
          <th scope="col" className="num">
            Energy a year
          </th>
          <th scope="col" className="num">
            Money a year
          </th>
        </tr>
      </thead>
      <tbody>
        {groups.map(({ key, words, sum: own }) => (
          <tr key={key}>
            <th scope="row" className="id">
              <Link href={`/review${questionWith('/review', query, { [by]: key, group: null })}`}>
                <bdi>{words}</bdi>
              </Link>
            </th>
            <SumCells sum={own} currency={currency} />
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">All that are asked for</th>
          <SumCells sum={sum} currency={currency} />
        </tr>
      </tfoot>
    </DataTable>
  );
}

function SumCells({ sum, currency }: { sum: ReviewSum; currency: string | null }) {
  const { open, accepted, kwh, moneyHundredths } = sum;
  return (
    <>
      <td className="num">{open}</td>
      <td className="num">{accepted}</td>
      <td className="num">{kwh === 0 ? '–' : kwhText(kwh)}</td>
      <td className="num">{moneyHundredths === 0 ? '–' : moneyText(moneyHundredths / 100, currency)}</td>
    </>
  );
}
