import Link from 'next/link';
import type { CriticalityCount } from '@/lib/register/queries/cover-of-sets';
import { DataTable } from '../look/data-table';

/** How the sets stand, those of most weight first; each figure leads to its sets. */
export function CriticalityTable({ counts }: { counts: readonly CriticalityCount[] }) {
  return (
    <DataTable name="Cover by criticality">
      <thead>
        <tr>
          <th scope="col">Criticality</th>
          <th scope="col" className="num">
            Sets
          </th>
          <th scope="col" className="num">
            Nothing could go in
          </th>
          <th scope="col" className="num">
            Only to be checked
          </th>
          <th scope="col" className="num">
            A single motor
          </th>
        </tr>
      </thead>
      <tbody>
        {counts.map(({ criticality, sets, states }) => (
          <tr key={criticality ?? 'none'}>
            <th scope="row">{criticality === null ? 'not told' : `${criticality} of 4`}</th>
            <td className="num">{sets}</td>
            {(['none', 'unsure', 'one'] as const).map((state) => (
              <td className="num" key={state}>
                {states[state] === 0 || criticality === null ? (
                  states[state]
                ) : (
                  <Link className="to" href={`/cover?criticality=${criticality}&state=${state}`}>
                    {states[state]}
                  </Link>
                )}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
