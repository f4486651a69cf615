import type { ReactNode } from 'react';

/** Named facts, one a row, ruled between. */
export function Facts({ rows }: { rows: readonly { label: string; value: ReactNode }[] }) {
  return (
    <dl className="kv">
      {rows.map(({ label, value }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Key figures, three a row. A figure not known is a question mark. */
export function Figures({ cells }: { cells: readonly { label: string; value: string | null; unit?: string }[] }) {
  return (
    <dl className="figs">
      {cells.map(({ label, value, unit }) => (
        <div key={label}>
          <dt className="label">{label}</dt>
          <dd>
            {value === null ? <abbr title="not known">?</abbr> : <bdi>{value}</bdi>}
            {value !== null && unit !== undefined && <small className="of"> {unit}</small>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
