import Link from 'next/link';
import type { RuleId } from '@/lib/plausibility/doubt';
import type { RuleCount } from '@/lib/register/queries/doubts';
import { DataTable } from '../look/data-table';
import { RULE_WORDS } from './rule-words';

/** How many doubts each rule raises; a rule leads to its own. */
export function RuleTable({ counts, rule }: { counts: readonly RuleCount[]; rule: RuleId | null }) {
  const sum = (key: 'wrong' | 'doubtful' | 'accepted') => counts.reduce((all, one) => all + one[key], 0);
  return (
    <DataTable name="Doubts by rule">
      <thead>
        <tr>
          <th scope="col">About</th>
          <th scope="col" className="num">
            Cannot be
          </th>
          <th scope="col" className="num">
            Hard to believe
          </th>
          <th scope="col" className="num">
            Accepted
          </th>
        </tr>
      </thead>
      <tbody>
        {counts.map((one) => (
          <tr key={one.rule}>
            <th scope="row" className="id">
              <Link href={`/doubts?rule=${one.rule}`} aria-current={rule === one.rule ? 'true' : undefined}>
                {RULE_WORDS[one.rule]}
              </Link>
            </th>
            <Figures {...one} />
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" className="id">
            <Link href="/doubts" aria-current={rule === null ? 'true' : undefined}>
              All
            </Link>
          </th>
          <Figures wrong={sum('wrong')} doubtful={sum('doubtful')} accepted={sum('accepted')} />
        </tr>
      </tfoot>
    </DataTable>
  );
}

const Figures = ({ wrong, doubtful, accepted }: Pick<RuleCount, 'wrong' | 'doubtful' | 'accepted'>) => (
  <>
    <td className="num">{wrong}</td>
    <td className="num">{doubtful}</td>
    <td className="num">{accepted}</td>
  </>
);
