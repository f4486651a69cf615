import Link from 'next/link';
import { SectionHead } from '@/app/look/section-head';
import { framePath } from '@/app/paths';
import type { Units } from '@/lib/fields/field';
import type { FrameFound, FramesMeasured } from '@/lib/standards/measured/frames-measured';
import type { Misfit } from '@/lib/standards/measured/misfit';
import { nameOf, type TellsApart, type Twins } from '@/lib/standards/measured/tell-apart';
import { figure } from '@/lib/units/figure';
import { inchesOfMm } from '@/lib/units/length';
import { MEASURED_WORDS, type MeasuredAsked, newMotorPath } from './measured-asked';

/** The frames that it can be, each with every reading beside its figure; then what would tell them apart. */
export function FramesFound({
  found: { fits, near },
  next,
  twins,
  asked,
  units,
  mayEnter,
}: {
  found: FramesMeasured;
  next: readonly TellsApart[];
  twins: Twins | null;
  asked: MeasuredAsked;
  units: Units;
  mayEnter: boolean;
}) {
  const count = Object.keys(asked.measured).length;
  const readings = count === 1 ? 'the one reading' : `all ${count} readings`;
  const line = (found: FrameFound) => (
    <FrameLine key={nameOf(found.option)} found={found} asked={asked} units={units} mayEnter={mayEnter} />
  );
  return (
    <div id="found">
      <SectionHead title="It can be" aside={fits.length === 0 ? 'no frame known here' : fits.length} />
      {fits.length === 0 ? (
        <p className="pt-3">
          No frame of either family agrees with {readings}. Measure again, look for a second pair of holes, and for a
          plate under paint; the nearest stand below. A motor may also be nobody’s standard.
        </p>
      ) : (
        <>
          <p className="pt-3">
            {fits.length === 1 ? 'One frame agrees' : `${fits.length} frames agree`} with {readings}. What was not
            measured is not known: a frame that agrees is not yet the frame.
          </p>
          {twins !== null && <TwinsNote twins={twins} units={units} />}
          <ul className="lines">{fits.slice(0, MOST).map(line)}</ul>
          {fits.length > MOST && (
            <p className="pt-3">And {fits.length - MOST} more. Measure one thing more of those below.</p>
          )}
          {next.length > 0 && <NextReadings next={next} units={units} />}
        </>
      )}
      {near.length > 0 && (
        <>
          <SectionHead title="It is not" aside="the nearest" />
          <ul className="lines">{near.map(line)}</ul>
        </>
      )}
    </div>
  );
}

const MOST = 20;

function FrameLine({
  found: { option, misfits, worst, untold },
  asked,
  units,
  mayEnter,
}: {
  found: FrameFound;
  asked: MeasuredAsked;
  units: Units;
  mayEnter: boolean;
}) {
  const [frame = option.frame] = option.frame.split(' ');
  const kind = option.fit.face?.kind;
  const mounting = kind === 'FF' ? 'IM B35' : kind === 'FT' ? 'IM B34' : null;
  return (
    <li>
      <span className="line-name">
        <Link href={framePath(option.frame)}>
          <bdi>{nameOf(option)}</bdi>
        </Link>
      </span>
      <span className="line-aside">{option.system}</span>
      <ul className="line-below told">
        {misfits.map((misfit) => (
          <li key={misfit.name}>{sentence(misfit, units)}</li>
        ))}
        {untold.length > 0 && (
          <li>The standard does not fix the last {untold.length === 1 ? '' : `${untold.length} `}for it.</li>
        )}
        {worst === 0 && mayEnter && (
          <li>
            <Link className="to" href={newMotorPath(frame, mounting, asked)}>
              Enter a motor with this frame
            </Link>
          </li>
        )}
      </ul>
    </li>
  );
}

function sentence({ name, have, need, difference, beyond }: Misfit, units: Units): string {
  const { label } = MEASURED_WORDS[name];
  if (need === null || difference === null) return `${label}: ${text(have, units)} here, not fixed by the standard`;
  const apart = `${difference > 0 ? '+' : difference < 0 ? '−' : '±'}${text(Math.abs(difference), units)}`;
  return `${label}: ${text(have, units)} here, ${text(need, units)} there, ${apart}${beyond === 0 ? '' : ' – it does not agree'}`;
}

function TwinsNote({ twins: { nema, iec, differences }, units }: { twins: Twins; units: Units }) {
  return (
    <div className="problem-list">
      <p>
        <b>Two families are left, and they do not fit each other.</b> Between {nema} and {iec}:
      </p>
      <ul className="told">
        {differences.map(({ name, nemaMm, iecMm, difference }) => (
          <li key={name}>
            {MEASURED_WORDS[name].label}: {text(nemaMm, units)} and {text(iecMm, units)},{' '}
            {text(Math.abs(difference), units)} apart
          </li>
        ))}
      </ul>
    </div>
  );
}

function NextReadings({ next, units }: { next: readonly TellsApart[]; units: Units }) {
  return (
    <>
      <SectionHead title="Measure next" aside="what parts them best" />
      <ul className="told pt-3">
        {next.slice(0, 3).map(({ name, figures }) => (
          <li key={name}>
            <b>{MEASURED_WORDS[name].label}</b>{' '}
            {figures
              .slice(0, 6)
              .map(
                ({ mm, frames }) =>
                  `${text(mm, units)}: ${frames.slice(0, 4).join(', ')}${frames.length > 4 ? ' …' : ''}`,
              )
              .join('; ')}
          </li>
        ))}
      </ul>
    </>
  );
}

const text = (mm: number, units: Units) => (units === 'us' ? `${figure(inchesOfMm(mm), 3)} in` : `${figure(mm, 1)} mm`);
