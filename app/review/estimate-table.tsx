import { Fragment } from 'react';
import type { EstimateMethod } from '@/lib/energy/estimates/estimate';
import type { LoadEstimates } from '@/lib/energy/load-estimates';
import { figure } from '@/lib/units/figure';
import { DataTable } from '../look/data-table';

const METHOD_WORDS: Record<EstimateMethod, string> = {
  'input-power': 'By input power',
  output: 'By input power and efficiency',
  'line-current': 'By amps',
  slip: 'By slip',
  'slip-at-voltage': 'By slip and volts',
};

/** Every load that the readings allow, each with the band it lies in. None is chosen: a person weighs them. */
export function EstimateTable({ found }: { found: LoadEstimates }) {
  const { estimates, notMade, contradictions } = found;
  return (
    <>
      {estimates.length > 0 && (
        <DataTable name="Load by the readings">
          <thead>
            <tr>
              <th scope="col">Way</th>
              <th scope="col" className="num">
                Load
              </th>
              <th scope="col" className="num">
                Between
              </th>
            </tr>
          </thead>
          <tbody>
            {estimates.map(({ method, loadPct, lowPct, highPct, arithmetic, cite, caveats }) => (
              <Fragment key={method}>
                <tr>
                  <th scope="row">{METHOD_WORDS[method]}</th>
                  <td className="num">{figure(loadPct, 0)} %</td>
                  <td className="num">
                    {figure(lowPct, 0)} to {figure(highPct, 0)} %
                  </td>
                </tr>
                <tr className="source">
                  <td colSpan={3}>
                    <span className="label block">{[`${arithmetic}.`, ...caveats].join(' ')}</span>
                    <span className="label block">{cite}</span>
                  </td>
                </tr>
              </Fragment>
            ))}
          </tbody>
        </DataTable>
      )}
      {contradictions.map(({ says }) => (
        <p key={says} className="problem-list">
          {says}
        </p>
      ))}
      {notMade.length > 0 && (
        <details>
          <summary className="more">
            {notMade.length === 1 ? 'One way is not open' : `${notMade.length} ways are not open`}
          </summary>
          <ul className="cautions">
            {notMade.map(({ method, why }) => (
              <li key={method}>
                {METHOD_WORDS[method]}: {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
