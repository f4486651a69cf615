import type { ReactNode } from 'react';

/** The head of a table that reads have, need, difference. `first` names its rows for those who cannot see it. */
export function FindFrame({ title, first, children }: { title: string; first: string; children: ReactNode }) {
  return (
    <table className="find">
      <caption className="vh">{title}</caption>
      <colgroup>
        <col />
        <col className="c-figure" />
        <col className="c-figure" />
        <col className="c-difference" />
      </colgroup>
      <thead>
        <tr>
          <th scope="col">
            <span className="vh">{first}</span>
          </th>
          <th scope="col">have</th>
          <th scope="col">need</th>
          <th scope="col">difference</th>
        </tr>
      </thead>
      {children}
    </table>
  );
}
