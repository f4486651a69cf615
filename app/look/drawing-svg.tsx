import { Fragment, useId } from 'react';
import type { Box, Detail, DimensionLine, Drawing, Label, Shape } from '@/lib/drawing/drawing';
import { figuresAt, letterAt, type PlacedText } from '@/lib/drawing/placed-text';

/** A view to scale. Strokes keep their weight; the hatch is as close on screen at every scale. */
export function DrawingSvg({ drawing }: { drawing: Drawing }) {
  return (
    <Frame box={drawing.viewBox} textMm={drawing.textMm} name={drawing.sentence} shapes={drawing.shapes}>
      <Notes dimensions={drawing.dimensions} labels={drawing.labels} textMm={drawing.textMm} />
      {drawing.details.map((detail) => (
        <Fragment key={detail.letter}>
          <circle
            className="d-spot"
            cx={short(detail.spot.centre.x)}
            cy={short(detail.spot.centre.y)}
            r={short(detail.spot.radiusMm)}
          />
          <path className="d-spot" d={`M${point(detail.leader.from)}L${point(detail.leader.to)}`} />
          <TextSvg text={letterAt(detail, drawing.textMm)} />
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
        {shapes.some(({ role }) => role === 'new') && (
          <pattern
            id={`${hatch}-new`}
            patternUnits="userSpaceOnUse"
            width={short(gap)}
            height={short(gap)}
            patternTransform="rotate(-45)"
          >
            <path className="d-ground" d={`M0 0H${short(gap)}V${short(gap)}H0Z`} />
            <path className="d-new-line" d={`M0 0V${short(gap)}`} style={{ strokeWidth: short(gap * 0.5) }} />
          </pattern>
        )}
      </defs>
      {shapes.map((shape) => (
        <ShapeSvg key={keyOf(shape)} shape={shape} hatch={hatch} />
      ))}
      {children}
    </svg>
  );
}

function ShapeSvg({ shape, hatch }: { shape: Shape; hatch: string }) {
  const fill = { out: `url(#${hatch})`, new: `url(#${hatch}-new)` }[shape.role as string];
  const look = { className: `d-${shape.role}`, ...(fill !== undefined && { fill }) };
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
      {labels.map((label) => (
        <Fragment key={`${label.at.x} ${label.at.y}`}>
          {label.leader.length > 1 && <path className="d-leader" d={`M${label.leader.map(point).join('L')}`} />}
          <TextSvg text={{ ...label, isUpright: false }} />
        </Fragment>
      ))}
    </>
  );
}

/** Ticks are oblique, and extension lines run a little past the line. */
function DimensionSvg({ line, textMm }: { line: DimensionLine; textMm: number }) {
  const { direction, from, to, at } = line;
  const isLevel = direction === 'level';
  const ends = [from, to].map(({ x, y }) => (isLevel ? { x, y: at } : { x: at, y }));
  const starts = [from, to];
  const past = textMm * 0.3;
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
      {figuresAt(line, textMm).map((text) => (
        <TextSvg key={`${text.tone} ${text.text}`} text={text} />
      ))}
    </>
  );
}

function TextSvg({ text: { text, at, anchor, tone, isUpright } }: { text: PlacedText }) {
  const [x, y] = [short(at.x), short(at.y)];
  return (
    <text
      className={`d-text-${tone}`}
      x={x}
      y={y}
      textAnchor={anchor}
      transform={isUpright ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {text}
    </text>
  );
}

/** Two shapes of a view differ in role or place. */
const keyOf = (shape: Shape) => JSON.stringify(shape);

const point = ({ x, y }: { x: number; y: number }) => `${short(x)} ${short(y)}`;
const short = (value: number) => Math.round(value * 1000) / 1000;
