import { AxisBottom, AxisLeft } from '@visx/axis';
import { GridRows } from '@visx/grid';
import { Group } from '@visx/group';
import { scaleBand, scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import { CHART_AXIS } from './chart-axis';

const WIDTH = 640;
const HEIGHT = 260;
const LEFT = 56;
const TOP = 12;
const BOTTOM = 40;

/** Columns in ink over a scale, drawn on the server; `hatched` ones stand apart by their hatch. Its table stands beside it. */
export function ColumnChart({
  id,
  name,
  columns,
  unit,
}: {
  /** Its own on the page. */
  id: string;
  /** A sentence for those who cannot see it. */
  name: string;
  columns: readonly { label: string; value: number; isHatched?: boolean }[];
  unit: string;
}) {
  const x = scaleBand({ domain: columns.map(({ label }) => label), range: [LEFT, WIDTH], padding: 0.2 });
  const most = Math.max(1, ...columns.map(({ value }) => value));
  const y = scaleLinear({ domain: [0, most], range: [HEIGHT - BOTTOM, TOP], nice: true });
  // So many names fit beside each other.
  const every = Math.ceil(columns.length / 14);
  return (
    <svg className="chart" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={name}>
      <defs>
        <pattern id={`${id}-hatch`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line y2="6" className="chart-hatch" />
        </pattern>
      </defs>
      <GridRows scale={y} left={LEFT} width={WIDTH - LEFT} numTicks={4} className="chart-grid" stroke="currentColor" />
      <Group>
        {columns.map(({ label, value, isHatched }) => (
          <Bar
            key={label}
            x={x(label) ?? 0}
            y={y(value)}
            width={x.bandwidth()}
            height={HEIGHT - BOTTOM - y(value)}
            {...(isHatched === true
              ? { className: 'chart-column-hatched', fill: `url(#${id}-hatch)` }
              : { className: 'chart-column' })}
          />
        ))}
      </Group>
      <AxisLeft scale={y} left={LEFT} numTicks={4} label={unit} labelOffset={36} {...CHART_AXIS} />
      <AxisBottom
        scale={x}
        top={HEIGHT - BOTTOM}
        tickValues={columns.flatMap(({ label }, i) => (i % every === 0 ? [label] : []))}
        {...CHART_AXIS}
      />
    </svg>
  );
}
