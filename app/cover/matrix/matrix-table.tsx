import type { Matrix, MatrixCell } from '@/lib/spares/cover/matrix';
import { DataTable } from '../../look/data-table';
import { Mark } from '../../look/mark';
import { ClusterHead, framesText } from './cluster-head';

/** Kinds of set against kinds of shelf motor: the best verdict, and how many motors could go in. */
export function MatrixTable({ rows, columns }: Matrix) {
  return (
    <DataTable name="Kinds of set against kinds of shelf motor" matrix>
      <thead>
        <tr>
          <th scope="col">Sets, and the shelf motors at their right</th>
          {columns.map(({ cluster, motors }) => (
            <th scope="col" key={JSON.stringify(cluster)}>
              <ClusterHead cluster={cluster} />
              <span className="line">{motors.length === 1 ? '1 motor' : `${motors.length} motors`}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ cluster, frames, sets, bare, cells }) => (
          <tr key={JSON.stringify(cluster)} className={bare === sets.length ? 'act' : undefined}>
            <th scope="row">
              <ClusterHead cluster={cluster} />
              {frames.length > 0 && (
                <span className="line">
                  <bdi>{framesText(frames)}</bdi>{' '}
                </span>
              )}
              <span className="line">
                {sets.length === 1 ? '1 set' : `${sets.length} sets`}
                {bare > 0 && (
                  <>
                    , <b>{bare} with nothing</b>
                  </>
                )}
              </span>
            </th>
            {columns.map((column, i) => (
              <td className="dim" key={JSON.stringify(column.cluster)}>
                <Cell cell={cells[i] ?? null} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}

/** Empty: none of the motors could go into any of the sets. */
function Cell({ cell }: { cell: MatrixCell | null }) {
  if (cell === null) return null;
  return (
    <>
      <Mark verdict={cell.best} size="small" named /> {cell.motors}
    </>
  );
}
