import Link from 'next/link';
import { DataTable } from '@/app/look/data-table';
import { Mark } from '@/app/look/mark';
import { hoursText, VERDICT_WORDS } from '@/app/look/words';
import { setPath } from '@/app/paths';
import { isWorse } from '@/lib/matching/finding';
import type { Served } from '@/lib/purchase/group/group-purchase';

/** Each set of the group with how the judgement takes the motor there, and the worst of its findings. */
export function ServedTable({ served }: { served: readonly Served[] }) {
  return (
    <DataTable name="Sets that it would serve">
      <thead>
        <tr>
          <th scope="col">Set</th>
          <th scope="col">Verdict</th>
          <th scope="col" className="num">
            Hours
          </th>
          <th scope="col">What decides</th>
        </tr>
      </thead>
      <tbody>
        {served.map(({ tag, result }) => {
          const worst = worstOf(result.findings);
          return (
            <tr key={tag}>
              <td className="id">
                <Link href={setPath(tag)}>
                  <bdi>{tag}</bdi>
                </Link>
              </td>
              <td>
                <span className="with-mark">
                  <Mark verdict={result.verdict} size="small" /> {VERDICT_WORDS[result.verdict]}
                </span>
              </td>
              <td className="num">{result.verdict === 'unsuitable' ? '–' : hoursText(result.hours)}</td>
              <td>{worst === undefined ? 'nothing to do but the swap' : <bdi>{worst.says}</bdi>}</td>
            </tr>
          );
        })}
      </tbody>
    </DataTable>
  );
}

/** The worst finding that asks for something; undefined: none does. */
const worstOf = (findings: Served['result']['findings']) =>
  findings
    .filter(({ grade }) => isWorse(grade, 'note'))
    .reduce<(typeof findings)[number] | undefined>(
      (worst, one) => (worst === undefined || isWorse(one.grade, worst.grade) ? one : worst),
      undefined,
    );
