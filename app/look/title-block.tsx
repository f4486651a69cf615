import type { ReactNode } from 'react';

export interface TitleCell {
  label: string;
  value: ReactNode;
}

const LONG = 14;

/**
 * Tag large with what it serves, then cells; a phone shows the first three. The small form stands on pages below the
 * set. On paper it closes the sheet, the small form heads it; both have room for two names.
 */
export function TitleBlock({
  tag,
  kind,
  name,
  cells,
  small,
}: {
  tag: string;
  kind?: string;
  name?: ReactNode;
  cells: readonly TitleCell[];
  small?: true;
}) {
  return (
    <header className={small ? 'tb small' : 'tb'}>
      <div className="tb-head">
        {kind !== undefined && <p className="label">{kind}</p>}
        <h1 className={tag.length > LONG ? 'tb-tag long' : 'tb-tag'}>
          <bdi>{tag}</bdi>
        </h1>
        {name !== undefined && <p className="tb-name">{name}</p>}
      </div>
      <dl className="tb-cells">
        {cells.map(({ label, value }) => (
          <div key={label}>
            <dt className="label">{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        {['Done by', 'Checked by'].map((label) => (
          <div key={label} className="signs">
            <dt className="label">{label}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </header>
  );
}
