import { type Connection, connectionName } from '@/lib/job/connection/connection-of';
import { leadsDrawing } from '@/lib/job/connection/leads';

/** The leads as they are joined for this supply, with the same joins in words; else where to look. */
export function LeadsDrawing({ connection }: { connection: Connection }) {
  if (connection.kind === 'unknown') return <p>{connection.says}</p>;
  const { width, height, radius, wires, leads, labels, sentence } = leadsDrawing(connection);
  return (
    <figure className="leads">
      <figcaption className="label">{connectionName(connection)}</figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={sentence} style={{ maxWidth: `${width * 1.5}px` }}>
        {wires.map(({ from, to }) => (
          <path key={`${from.x} ${from.y} ${to.x} ${to.y}`} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
        ))}
        {leads.map(({ nema, iec, x, y }) => (
          <g key={nema}>
            <circle cx={x} cy={y} r={radius} />
            <text x={x} y={y + 4}>
              {nema}
            </text>
            <text className="iec" x={x} y={y + radius + 11}>
              {iec}
            </text>
          </g>
        ))}
        {labels.map(({ text, x, y }) => (
          <text className="line" key={text} x={x} y={y}>
            {text}
          </text>
        ))}
      </svg>
      <p>{sentence}</p>
      {connection.says.map((one) => (
        <p key={one}>{one}</p>
      ))}
    </figure>
  );
}
