import Link from 'next/link';
import { DataTable } from '@/app/look/data-table';
import { VERDICT_WORDS, type Verdict } from '@/app/look/words';
import type { PurchaseOption } from '@/lib/purchase/group/group-purchase';
import { groupQuestion } from './group-asked';

const VERDICTS: readonly Verdict[] = ['straight-swap', 'swap-with-work', 'check-first', 'unsuitable'];

/** The ratings that could be bought, and in how many of the sets each would be what. */
export function OptionsTable({
  options,
  chosen,
  tags,
}: {
  options: readonly PurchaseOption[];
  chosen: PurchaseOption;
  tags: readonly string[];
}) {
  return (
    <DataTable name="Ratings that could be bought">
      <thead>
        <tr>
          <th scope="col">Rating</th>
          {VERDICTS.map((verdict) => (
            <th key={verdict} scope="col" className="num">
              {VERDICT_WORDS[verdict]}
            </th>
          ))}
          <th scope="col" className="num">
            Contradictions
          </th>
        </tr>
      </thead>
      <tbody>
        {options.map((option) => (
          <tr key={option.motor.id}>
            <td className="id">
              <Link
                href={`/buy${groupQuestion(tags, option.motor.id)}`}
                aria-current={option === chosen ? 'true' : undefined}
              >
                <bdi>{option.motor.id}</bdi>
              </Link>
              {option === chosen && <span className="label block">shown below</span>}
            </td>
            {VERDICTS.map((verdict) => (
              <td key={verdict} className="num">
                {option.served.filter(({ result }) => result.verdict === verdict).length}
              </td>
            ))}
            <td className="num">{option.contradictions.length}</td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
