import Link from 'next/link';
import { thousands } from '@/app/thousands';
import type { HeldLine } from '@/lib/register/queries/hold';
import type { Offered } from '@/lib/spares/hold/candidate';
import { nameOf } from '@/lib/spares/hold/price-list';
import { DataTable } from '../look/data-table';
import { untorn } from '../look/untorn';
import { candidatesPath, motorPath } from '../paths';
import { ratingText } from '../rating-text';

/** As many sets and numbers as stand in one row. */
const SHOWN = 8;

/** The motors to hold, those for the most sets first. */
export function HeldTable({
  lines,
  chancePct,
  currency,
}: {
  lines: readonly HeldLine[];
  chancePct: number;
  currency: string;
}) {
  return (
    <DataTable name="Motors to hold">
      <thead>
        <tr>
          <th scope="col">Motor</th>
          <th scope="col">From</th>
          <th scope="col">For</th>
          <th scope="col" className="num">
            Sets
          </th>
          <th scope="col" className="num">
            Price
          </th>
          <th scope="col" className="num">
            To hold for {chancePct} %
          </th>
          <th scope="col" className="num">
            Apart
          </th>
          <th scope="col" className="screen-only">
            Leave out
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ held, candidate, offered, sets, stock }) => (
          <tr key={held.candidate}>
            <td>
              <bdi>{untorn(ratingText(candidate.motor))}</bdi>
            </td>
            <td>{candidate.from === 'buy' ? 'to be bought' : <Names names={candidate.numbers} path={motorPath} />}</td>
            <td>
              {sets.length === 0 ? (
                'no set goes best with it'
              ) : (
                <Names names={sets.map(({ tag }) => tag)} path={candidatesPath} />
              )}
            </td>
            <td className="num">{sets.length}</td>
            <td className="num">{candidate.from === 'shelf' ? 'there' : <Price {...offered} currency={currency} />}</td>
            <td className="num">
              {stock === null
                ? 'days not told'
                : candidate.from === 'shelf'
                  ? `${stock.held} (${candidate.numbers.length} there)`
                  : stock.held}
            </td>
            <td className="num">{stock === null ? '–' : stock.apart}</td>
            <td className="pick screen-only">
              <label>
                <input type="checkbox" name="without" value={candidate.motor.id} form="hold" />
                <span className="vh">Leave out {candidate.motor.id}</span>
              </label>
            </td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}

/** What one is taken to cost, and by which of the two. */
function Price({ price, currency }: Pick<Offered, 'price'> & { currency: string }) {
  if (price === null) return 'not told';
  return (
    <>
      {thousands(price.amount, 2)} {currency}
      <span className="label block">
        {price.by === 'rule' ? 'each and per kW' : `list, line ${price.from.line}: ${nameOf(price.from)}`}
      </span>
    </>
  );
}

function Names({ names, path }: { names: readonly string[]; path: (name: string) => string }) {
  return (
    <>
      {names.slice(0, SHOWN).map((name, i) => (
        <span key={name}>
          {i > 0 && ', '}
          <Link className="to" href={path(name)}>
            <bdi>{name}</bdi>
          </Link>
        </span>
      ))}
      {names.length > SHOWN && ` and ${names.length - SHOWN} more`}
    </>
  );
}
