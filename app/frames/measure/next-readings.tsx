import { SectionHead } from '@/app/look/section-head';
import type { Units } from '@/lib/fields/field';
import type { facesApart, TellsApart } from '@/lib/standards/measured/tell-apart';
import { lengthText, MEASURED_WORDS } from './measured-words';

const MOST = { readings: 3, figures: 6, frames: 4 };

/** What to measure so that fewer frames are left, what parts them best first. */
export function NextReadings({
  next,
  faces,
  units,
}: {
  next: readonly TellsApart[];
  faces: ReturnType<typeof facesApart>;
  units: Units;
}) {
  return (
    <>
      <SectionHead title="Measure next" aside="what parts them best first" />
      <ul className="told pt-3">
        {faces !== null && (
          <li>
            <b>Look for a face at the shaft end</b>
            <ul>
              <li>none: {few(faces.bare)}</li>
              <li>one with holes round the shaft: {few(faces.faced)}</li>
            </ul>
          </li>
        )}
        {next.slice(0, MOST.readings).map(({ name, isAgain, figures }) => (
          <li key={name}>
            <b>
              {MEASURED_WORDS[name].label}
              {isAgain && ', again and by a caliper'}
            </b>
            <ul>
              {figures.slice(0, MOST.figures).map(({ mm, frames }) => (
                <li key={mm}>
                  {lengthText(mm, units)}: {few(frames)}
                </li>
              ))}
              {figures.length > MOST.figures && <li>and {figures.length - MOST.figures} other figures</li>}
            </ul>
          </li>
        ))}
      </ul>
    </>
  );
}

const few = (frames: readonly string[]) =>
  `${frames.slice(0, MOST.frames).join('; ')}${frames.length > MOST.frames ? ` and ${frames.length - MOST.frames} more` : ''}`;
