import { SectionHead } from '@/app/look/section-head';
import { type FrameFound, framesMeasured } from '@/lib/standards/measured/frames-measured';
import { nameOf } from '@/lib/standards/measured/name-of';
import { facesApart, tellApart } from '@/lib/standards/measured/tell-apart';
import { twinsOf } from '@/lib/standards/measured/twins';
import { FrameLine } from './frame-line';
import type { MeasuredAsked } from './measured-asked';
import { motorFieldsOf, newMotorPath } from './new-motor-path';
import { NextReadings } from './next-readings';
import { TwinsNote } from './twins-note';

/** As many as are shown without being asked for. */
const FIRST = 4;
const MOST_NAMES = 10;

/** The frames that it can be, then what would tell them apart, then those that it is not. */
export function FramesFound({
  asked,
  mayEnter,
  more,
}: {
  asked: MeasuredAsked;
  mayEnter: boolean;
  /** What else is known of it, by the names of a motor's fields. */
  more?: Readonly<Record<string, string>>;
}) {
  const { measured, seen, tool, units } = asked;
  const found = framesMeasured(measured, seen, tool);
  const { fits, near } = found;
  const next = tellApart(fits, measured, seen, tool);
  const faces = facesApart(fits, seen);
  const twins = twinsOf(found);
  const line = (one: FrameFound) => (
    <FrameLine
      key={nameOf(one.option)}
      found={one}
      units={units}
      enter={mayEnter && one.worst === 0 ? newMotorPath({ ...more, ...motorFieldsOf(one.option, asked) }) : null}
    />
  );
  return (
    <div id="found">
      <SectionHead title="It can be" aside={fits.length === 0 ? 'no frame known here' : fits.length} />
      <p className="pt-3">{saysOf(fits, Object.keys(measured).length)}</p>
      {twins !== null && <TwinsNote twins={twins} />}
      {(next.length > 0 || faces !== null) && <NextReadings next={next} faces={faces} units={units} />}
      {fits.length > 0 && <SectionHead title="Each beside its figures" aside="the nearest first" />}
      <ul>{fits.slice(0, FIRST).map(line)}</ul>
      {fits.length > FIRST && (
        <details>
          <summary className="more">And {fits.length - FIRST} more</summary>
          <ul>{fits.slice(FIRST).map(line)}</ul>
        </details>
      )}
      {near.length > 0 && (
        <details open={fits.length === 0}>
          <summary className="more">It is not: the nearest {near.length} that do not agree</summary>
          <ul>{near.map(line)}</ul>
        </details>
      )}
    </div>
  );
}

function saysOf(fits: readonly FrameFound[], count: number): string {
  const readings = count === 1 ? 'the one reading' : `all ${count} readings`;
  if (fits.length === 0)
    return `No frame of either family agrees with ${readings}. Measure again, look for a second pair of holes, and for a plate under paint. A motor may also be nobody’s standard.`;
  const names = fits.slice(0, MOST_NAMES).map(({ option }) => nameOf(option));
  const more = fits.length > MOST_NAMES ? ` and ${fits.length - MOST_NAMES} more` : '';
  const agree = fits.length === 1 ? 'One frame agrees' : `${fits.length} frames agree`;
  const isWhole = fits.length === 1 && fits[0]?.unmeasured.length === 0;
  return `${agree} with ${readings}: ${names.join('; ')}${more}.${isWhole ? '' : ' What was not measured is not known: a frame that agrees is not yet the frame.'}`;
}
