import { AxisBottom, AxisLeft } from '@visx/axis';
import { GridRows } from '@visx/grid';
import { Group } from '@visx/group';
import { scaleBand, scaleLinear } from '@visx/scale';
import { Bar } from '@visx/shape';
import { CHART_AXIS, CHART_SIZES, type ChartSize, namesApart } from './chart-axis';

const HEIGHT = 270;
const LEFT = 60;
/** px that the last name may stand out. */
const RIGHT = 8;
const TOP = 12;
const BOTTOM = 60;

interface Columns {
  /** Its own on the page. */
  id: string;
  /** A sentence for those who cannot see it. */
  name: string;
  /** Null leaves its place empty. */
  columns: readonly { label: string; value: number | null; isHatched?: boolean }[];
  unit: string;
  /** What the columns stand for, under them. */
  across: string;
}

/** Columns in ink over a scale, drawn on the server; `hatched` ones stand apart by their hatch. Its table stands beside it. */
export function ColumnChart(asked: Columns) {
  return CHART_SIZES.map((size) => <OneSize key={size.size} {...asked} {...size} />);
}

function OneSize({ id, name, columns, unit, across, size, width }: Columns & ChartSize) {
  const hatch = `${id}-hatch-${size}`;
  const x = scaleBand({ domain: columns.map((_column, i) => i), range: [LEFT, width - RIGHT], padding: 0.2 });
  const most = Math.max(1, ...columns.map(({ value }) => value ?? 0));
  const y = scaleLinear({ domain: [0, most], range: [HEIGHT - BOTTOM, TOP], nice: true });
  const labels = columns.map(({ label }) => label);
  const every = namesApart(labels, x.step());
  return (
    <svg className={`chart ${size}`} viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={name}>
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line y2="6" className="chart-hatch" />
        </pattern>
      </defs>
      <GridRows scale={y} left={LEFT} width={width - LEFT} numTicks={4} className="chart-grid" stroke="currentColor" />
      <Group>
        {columns.map(
          ({ label, value, isHatched }, i) =>
            value !== null && (
              <Bar
                key={label}
                x={x(i) ?? 0}
                y={y(value)}
                width={x.bandwidth()}
                height={HEIGHT - BOTTOM - y(value)}
                {...(isHatched === true
                  ? { className: 'chart-column-hatched', fill: `url(#${hatch})` }
                  : { className: 'chart-column' })}
              />
            ),
        )}
      </Group>
      <AxisLeft scale={y} left={LEFT} numTicks={4} label={unit} labelOffset={38} {...CHART_AXIS} />
      <AxisBottom
        scale={x}
        top={HEIGHT - BOTTOM}
        tickValues={columns.flatMap((_column, i) => (i % every === 0 ? [i] : []))}
        tickFormat={(i) => labels[i] ?? ''}
        label={across}
        labelOffset={18}
        {...CHART_AXIS}
      />
    </svg>
  );
}
