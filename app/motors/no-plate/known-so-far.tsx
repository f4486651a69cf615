import { motorFieldsOf, newMotorPath } from '@/app/frames/measure/new-motor-path';
import { Action } from '@/app/look/action';
import { SectionHead } from '@/app/look/section-head';
import { motorEditPath } from '@/app/paths';
import type { FrameFound } from '@/lib/standards/measured/frames-measured';
import { nameOf } from '@/lib/standards/measured/name-of';
import { figure } from '@/lib/units/figure';
import { knownFields } from './known-fields';
import { polesOf, type WalkAsked } from './walk-asked';
import { LEADS_SAY, ranSays, speedSays, usualRatings } from './what-it-says';

const MOST_RATINGS = 8;

/** What the steps told, what nobody knows yet, and the way to the motor's form. */
export function KnownSoFar({
  asked,
  fits,
  mayEnter,
}: {
  asked: WalkAsked;
  fits: readonly FrameFound[];
  mayEnter: boolean;
}) {
  const { tape, leads, enclosure, massKg, set, motor } = asked;
  const [only, another] = fits;
  const one = only !== undefined && another === undefined ? only : null;
  const fields = { ...knownFields(asked), ...motorFieldsOf(one?.option ?? null, tape) };
  const known = [
    one !== null && `Frame ${nameOf(one.option)}, as far as it was measured.`,
    fits.length > 1 &&
      `${fits.length} frames are left: ${fits
        .slice(0, 6)
        .map(({ option }) => nameOf(option))
        .join('; ')}${fits.length > 6 ? ' and more' : ''}.`,
    leads !== null && LEADS_SAY[leads],
    speedSays(asked),
    ranSays(asked),
    enclosure !== null && `Enclosure ${enclosure} by sight.`,
    massKg !== null && `Mass ${figure(massKg, 1)} kg.`,
    usualText(fits, asked),
  ].filter((line) => typeof line === 'string');
  return (
    <>
      <SectionHead title="Known so far" />
      {known.length === 0 && <p className="pt-3">Nothing yet. Each step tells something.</p>}
      <ul className="told pt-3">
        {known.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <SectionHead title="Not known yet" />
      <ul className="told pt-3">
        {unknownOf(asked, one).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div className="mt-4 grid">
        {!mayEnter ? (
          <p>The desk enters motors: send them the address of this page, in which everything stands that you found.</p>
        ) : motor === null ? (
          <Action href={newMotorPath({ ...fields, ...(set !== null && { where: 'in-set', inSet: set }) })}>
            Enter the motor with what is known
          </Action>
        ) : (
          <Action href={`${motorEditPath(motor)}?${new URLSearchParams(fields)}`}>
            <span>
              Write it to <bdi>{motor}</bdi>, where nothing stands yet
            </span>
          </Action>
        )}
      </div>
    </>
  );
}

function usualText(fits: readonly FrameFound[], asked: WalkAsked): string | null {
  const ratings = usualRatings(fits, asked);
  if (ratings.length === 0) return null;
  const words = ratings
    .slice(0, MOST_RATINGS)
    .map(
      ({ kw, hp, poles, frame }) =>
        `${hp === null ? `${figure(kw, 2)} kW` : `${figure(hp, 2)} hp`} at ${poles} poles (${frame})`,
    );
  const more = ratings.length > MOST_RATINGS ? ' and others' : '';
  return `The standards assign ${words.join(', ')}${more} to such a frame. A motor may be stronger or weaker than its frame says: that is no plate.`;
}

function unknownOf(asked: WalkAsked, one: FrameFound | null): string[] {
  return [
    one === null && 'The frame: measure one thing more.',
    one !== null && one.unmeasured.length > 0 && 'What of the frame was not measured may still make it another.',
    polesOf(asked) === null && 'The poles: the speed under load tells them, or a competent person by the winding.',
    asked.leads === null && 'The leads, and so how it can be connected and started.',
    'Power, volts, amps, service factor, insulation class and duty: nothing outside tells them. The paper of the pump, the overload’s setting, the fuses and the cable bound them.',
    'An area mark: a motor without one is none for a classified place, whatever it was before.',
    'Its IP digits, and whether it is made for a drive or for washdown.',
  ].filter((line) => typeof line === 'string');
}
