import { AxisBottom } from '@visx/axis';
import { GridColumns } from '@visx/grid';
import { scaleBand, scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import { CHART_AXIS } from './chart-axis';

const WIDTH = 640;
const ROW = 44;
const FOOT = 48;
/** px under a name that its bar begins at. */
const NAME = 17;

/** Lying bars in ink, each under its name, so that names of any length stand; drawn on the server. Its table stands beside it. */
export function BarChart({
  name,
  bars,
  unit,
}: {
  /** A sentence for those who cannot see it. */
  name: string;
  bars: readonly { label: string; value: number }[];
  unit: string;
}) {
  const height = bars.length * ROW;
  const x = scaleLinear({
    domain: [0, Math.max(1, ...bars.map(({ value }) => value))],
    range: [1, WIDTH - 24],
    nice: true,
  });
  const y = scaleBand({ domain: bars.map((_bar, i) => i), range: [0, height], padding: 0.15 });
  return (
    <svg className="chart" viewBox={`0 0 ${WIDTH} ${height + FOOT}`} role="img" aria-label={name}>
      <GridColumns scale={x} height={height} numTicks={4} className="chart-grid" stroke="currentColor" />
      {bars.map(({ label, value }, i) => {
        const top = y(i) ?? 0;
        return (
          <g key={label}>
            <text x={1} y={top + 12} {...CHART_AXIS.tickLabelProps}>
              {label}
            </text>
            <Bar
              className="chart-column"
              x={1}
              y={top + NAME}
              width={Math.max(0, x(value) - 1)}
              height={y.bandwidth() - NAME}
            />
          </g>
        );
      })}
      <AxisBottom scale={x} top={height} numTicks={4} label={unit} labelOffset={14} {...CHART_AXIS} />
    </svg>
  );
}
