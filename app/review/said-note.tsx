import type { Query } from '../lists/asked-for';

/** After an acceptance of a finding or its withdrawal: what came of it. */
export function SaidNote({ query }: { query: Query }) {
  const says = typeof query.said === 'string' ? SAID.get(query.said) : undefined;
  return says === undefined ? null : (
    <p className="problem-list" role="status">
      {says}
    </p>
  );
}

const SAID = new Map([
  ['accepted', 'Accepted. It stands open again on the day told, or when one of its figures changes.'],
  ['withdrawn', 'Withdrawn. The finding stands open again.'],
]);
