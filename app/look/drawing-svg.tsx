import { Fragment, useId } from 'react';
import type { Box, Detail, DimensionLine, Drawing, Label, Shape } from '@/lib/drawing/drawing';

/** A view to scale. Strokes keep their weight; the hatch is as close on screen at every scale. */
export function DrawingSvg({ drawing }: { drawing: Drawing }) {
  return (
    <Frame box={drawing.viewBox} textMm={drawing.textMm} name={drawing.sentence} shapes={drawing.shapes}>
      <Notes dimensions={drawing.dimensions} labels={drawing.labels} textMm={drawing.textMm} />
      {drawing.details.map(({ letter, spot, leader }) => (
        <Fragment key={letter}>
          <circle className="d-spot" cx={spot.centre.x} cy={spot.centre.y} r={spot.radiusMm} />
          <path className="d-spot" d={`M${point(leader.from)}L${point(leader.to)}`} />
          <text
            className="d-letter"
            x={leader.to.x + Math.sign(leader.to.x - leader.from.x) * drawing.textMm * 0.4}
            y={leader.to.y + drawing.textMm * (leader.to.y > leader.from.y ? 0.8 : 0)}
            textAnchor="middle"
          >
            {letter}
          </text>
        </Fragment>
      ))}
    </Frame>
  );
}

/** The same shapes through the window of a detail. */
export function DetailSvg({ detail, shapes }: { detail: Detail; shapes: readonly Shape[] }) {
  return (
    <Frame isDetail box={detail.viewBox} textMm={detail.textMm} name={detail.sentence} shapes={shapes}>
      <Notes dimensions={detail.dimensions} labels={detail.labels} textMm={detail.textMm} />
    </Frame>
  );
}

function Frame({
  box,
  textMm,
  name,
  shapes,
  isDetail,
  children,
}: {
  box: Box;
  textMm: number;
  name: string;
  shapes: readonly Shape[];
  isDetail?: true;
  children: React.ReactNode;
}) {
  const hatch = useId();
  const gap = textMm * 0.36;
  return (
    <svg
      className={isDetail ? 'drawing detail' : 'drawing'}
      viewBox={[box.x, box.y, box.width, box.height].map(short).join(' ')}
      style={{ '--s': short(textMm) } as React.CSSProperties}
      role="img"
      aria-label={name}
    >
      <defs>
        <pattern
          id={hatch}
          patternUnits="userSpaceOnUse"
          width={short(gap)}
          height={short(gap)}
          patternTransform="rotate(45)"
        >
          <path className="d-hatch-line" d={`M0 0V${short(gap)}`} style={{ strokeWidth: short(gap * 0.36) }} />
        </pattern>
      </defs>
      {shapes.map((shape) => (
        <ShapeSvg key={keyOf(shape)} shape={shape} hatch={hatch} />
      ))}
      {children}
    </svg>
  );
}

function ShapeSvg({ shape, hatch }: { shape: Shape; hatch: string }) {
  const look = { className: `d-${shape.role}`, ...(shape.role === 'out' && { fill: `url(#${hatch})` }) };
  switch (shape.kind) {
    case 'circle':
      return <circle {...look} cx={short(shape.centre.x)} cy={short(shape.centre.y)} r={short(shape.radiusMm)} />;
    case 'line':
      return <path {...look} d={`M${point(shape.from)}L${point(shape.to)}`} />;
    case 'polygon':
      return <path {...look} d={`M${shape.points.map(point).join('L')}Z`} />;
  }
}

function Notes({
  dimensions,
  labels,
  textMm,
}: {
  dimensions: readonly DimensionLine[];
  labels: readonly Label[];
  textMm: number;
}) {
  return (
    <>
      {dimensions.map((line) => (
        <DimensionSvg key={line.name} line={line} textMm={textMm} />
      ))}
      {labels.map(({ text, at, anchor, tone, leader }) => (
        <Fragment key={text}>
          {leader.length > 1 && <path className="d-leader" d={`M${leader.map(point).join('L')}`} />}
          <text className={TONES[tone]} x={short(at.x)} y={short(at.y)} textAnchor={anchor}>
            {text}
          </text>
        </Fragment>
      ))}
    </>
  );
}

const TONES = { in: 'd-text-in', out: 'd-text-out', act: 'd-text-act' } as const;

/** Candidate above the line, failed motor below; upright lines read from the right. Ticks are oblique. */
function DimensionSvg({ line, textMm }: { line: DimensionLine; textMm: number }) {
  const { direction, from, to, at, upper, lower } = line;
  const isLevel = direction === 'level';
  const ends = isLevel
    ? [
        { x: from.x, y: at },
        { x: to.x, y: at },
      ]
    : [
        { x: at, y: from.y },
        { x: at, y: to.y },
      ];
  const past = textMm * 0.3;
  const starts = [from, to];
  const middle = { x: isLevel ? (from.x + to.x) / 2 : at, y: isLevel ? at : (from.y + to.y) / 2 };
  const text = (shift: number) => {
    const place = isLevel ? { x: middle.x, y: middle.y + shift } : { x: middle.x + shift, y: middle.y };
    const turn = isLevel ? undefined : `rotate(-90 ${short(place.x)} ${short(place.y)})`;
    return { x: short(place.x), y: short(place.y), transform: turn, textAnchor: 'middle' as const };
  };
  return (
    <>
      {ends.map((end, i) => {
        const start = starts[i] ?? end;
        const way = isLevel ? Math.sign(end.y - start.y) : Math.sign(end.x - start.x);
        const beyond = isLevel ? { x: end.x, y: end.y + way * past } : { x: end.x + way * past, y: end.y };
        const tick = textMm * 0.24;
        return (
          <Fragment key={`${end.x} ${end.y}`}>
            <path className="d-extension" d={`M${point(start)}L${point(beyond)}`} />
            <path
              className="d-tick"
              d={`M${point({ x: end.x - tick, y: end.y + tick })}l${short(2 * tick)} ${short(-2 * tick)}`}
            />
          </Fragment>
        );
      })}
      <path className="d-extension" d={`M${ends.map(point).join('L')}`} />
      {upper !== null && (
        <text className="d-text-in" {...text(-textMm * 0.34)}>
          {upper}
        </text>
      )}
      {lower !== null && (
        <text className="d-text-out" {...text(textMm * 1.02)}>
          {lower}
        </text>
      )}
    </>
  );
}

/** Two shapes of a view differ in role or place. */
const keyOf = (shape: Shape) => JSON.stringify(shape);

const point = ({ x, y }: { x: number; y: number }) => `${short(x)} ${short(y)}`;
const short = (value: number) => Math.round(value * 1000) / 1000;
