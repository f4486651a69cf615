import { AxisBottom } from '@visx/axis';
import { GridColumns } from '@visx/grid';
import { scaleBand, scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import { CHART_AXIS, CHART_SIZES, type ChartSize, LETTER } from './chart-axis';

const ROW = 46;
const FOOT = 60;
/** px under a name that its bar begins at. */
const NAME = 19;
/** px that the last figure of the scale may stand out. */
const RIGHT = 24;
/** px that the 0 of the scale stands out. */
const LEFT = 5;

interface Bars {
  /** A sentence for those who cannot see it. */
  name: string;
  bars: readonly { label: string; value: number }[];
  unit: string;
}

/** Lying bars in ink, each under its name, so that names of any length stand; drawn on the server. Its table stands beside it. */
export function BarChart(asked: Bars) {
  return CHART_SIZES.map((size) => <OneSize key={size.size} {...asked} {...size} />);
}

function OneSize({ name, bars, unit, size, width }: Bars & ChartSize) {
  const height = bars.length * ROW;
  const x = scaleLinear({
    domain: [0, Math.max(1, ...bars.map(({ value }) => value))],
    range: [LEFT, width - RIGHT],
    nice: true,
  });
  const y = scaleBand({ domain: bars.map((_bar, i) => i), range: [0, height], padding: 0.15 });
  return (
    <svg className={`chart ${size}`} viewBox={`0 0 ${width} ${height + FOOT}`} role="img" aria-label={name}>
      <GridColumns scale={x} height={height} numTicks={4} className="chart-grid" stroke="currentColor" />
      {bars.map(({ label, value }, i) => {
        const top = y(i) ?? 0;
        return (
          <g key={label}>
            <text x={LEFT} y={top + 13} {...CHART_AXIS.tickLabelProps}>
              {whole(label, width)}
            </text>
            <Bar
              className="chart-column"
              x={LEFT}
              y={top + NAME}
              width={Math.max(0, x(value) - LEFT)}
              height={y.bandwidth() - NAME}
            />
          </g>
        );
      })}
      <AxisBottom scale={x} top={height} numTicks={4} label={unit} labelOffset={18} {...CHART_AXIS} />
    </svg>
  );
}

/** A name that would stand past the drawing is cut; the table has it whole. */
function whole(label: string, width: number): string {
  const most = Math.floor(width / LETTER);
  return label.length <= most ? label : `${label.slice(0, most - 1)}…`;
}
