import type { Query } from '../lists/asked-for';

/** After an acceptance or its withdrawal: what came of it. */
export function SaidNote({ query }: { query: Query }) {
  const says = typeof query.doubt === 'string' ? SAID.get(query.doubt) : undefined;
  return says === undefined ? null : (
    <p className="problem-list" role="status">
      {says}
    </p>
  );
}

const SAID = new Map([
  ['accepted', 'Accepted. It is raised again when one of its figures changes.'],
  ['withdrawn', 'Withdrawn. The doubt stands again.'],
]);
