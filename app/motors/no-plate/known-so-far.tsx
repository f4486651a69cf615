import Link from 'next/link';
import { type MeasuredAsked, newMotorPath } from '@/app/frames/measure/measured-asked';
import { SectionHead } from '@/app/look/section-head';
import type { FrameFound } from '@/lib/standards/measured/frames-measured';
import { figure } from '@/lib/units/figure';
import { LEADS_SAY, polesSeen, type SightAsked, speedSentence, usualRatings } from './told-by-sight';

/** What the steps told, and what nobody knows yet. */
export function KnownSoFar({
  asked,
  sight,
  fits,
  mayEnter,
}: {
  asked: MeasuredAsked;
  sight: SightAsked;
  fits: readonly FrameFound[];
  mayEnter: boolean;
}) {
  const poles = polesSeen(sight);
  const ratings = usualRatings(fits, poles);
  const [only, ...more] = [...new Set(fits.map(({ option }) => option.frame.split(' ')[0] ?? ''))];
  const frame = only !== undefined && more.length === 0 ? only : null;
  const speed = speedSentence(sight);
  const path = newMotorPath(frame, null, asked);
  const also = new URLSearchParams({
    ...(sight.enclosure !== null && { enclosure: sight.enclosure }),
    ...(sight.leads !== null && { leads: String(sight.leads) }),
    ...(poles !== null && { poles: String(poles) }),
  }).toString();
  return (
    <>
      <SectionHead title="Known so far" />
      <ul className="told pt-3">
        {frame !== null && <li>Frame {frame}, as far as it was measured.</li>}
        {speed !== null && <li>{speed}</li>}
        {sight.leads !== null && <li>{LEADS_SAY[sight.leads]}</li>}
        {sight.enclosure !== null && <li>Enclosure {sight.enclosure}; its IP digits are not known by sight.</li>}
        {ratings.length > 0 && (
          <li>
            The standards assign{' '}
            {ratings
              .slice(0, 8)
              .map(
                ({ kw, hp, poles: count, frame: of }) =>
                  `${hp === null ? `${figure(kw, 2)} kW` : `${figure(hp, 2)} hp`} at ${count} poles (${of})`,
              )
              .join(', ')}
            {ratings.length > 8 && ' and others'} to such a frame. A motor may be stronger or weaker than its frame
            says: that is no plate.
          </li>
        )}
      </ul>
      <SectionHead title="Not known yet" />
      <ul className="told pt-3">
        {frame === null && <li>The frame: measure one thing more.</li>}
        {poles === null && <li>The poles: its speed under load tells them, or a competent person by the winding.</li>}
        <li>
          Power, volts, amps, service factor, insulation, duty: nothing outside tells them. The drawings of the pump,
          the starter’s overload setting and the cable bound them; amps and volts measured while it still ran are worth
          noting.
        </li>
        <li>An area mark: a motor without one is none for a classified place, whatever it was before.</li>
        {sight.leads === null && <li>The leads, and so how it can be connected and started.</li>}
      </ul>
      {mayEnter && (
        <p className="pt-3">
          <Link className="to" href={also === '' ? path : `${path}&${also}`}>
            Enter the motor with what is known
          </Link>
        </p>
      )}
    </>
  );
}
