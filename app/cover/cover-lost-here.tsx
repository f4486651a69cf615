import Link from 'next/link';
import { Suspense } from 'react';
import type { Actor } from '@/lib/auth/may';
import { coveredSets } from '@/lib/register/queries/covered-sets';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { shelfMotors } from '@/lib/register/queries/shelf-motors';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { COUNTED_TO, type CoverLost, coverLost } from '@/lib/spares/cover-lost';
import { SectionHead } from '../look/section-head';
import { today } from '../moment';
import { candidatesPath } from '../paths';

/** As many sets as are told one by one. */
const SHOWN = 20;

/** Which sets lose their cover by a motor that leaves the shelf. It comes after the page, which does not wait for it. */
export function CoverLostHere({ actor, number, isTaken }: { actor: Actor; number: string; isTaken: boolean }) {
  return (
    <section className="screen-only" id="cover">
      <SectionHead title={isTaken ? 'What lost its cover' : 'What would lose its cover'} />
      <Suspense fallback={<p className="pt-3">The other sets are being looked at, about a second.</p>}>
        <Lost actor={actor} number={number} isTaken={isTaken} />
      </Suspense>
    </section>
  );
}

async function Lost({ actor, number, isTaken }: { actor: Actor; number: string; isTaken: boolean }) {
  const [known, { sets, isAll }, { offered }, { settings, timezone }] = await Promise.all([
    motorByNumber(actor, number),
    coveredSets(actor),
    shelfMotors(actor),
    siteSettings(actor),
  ]);
  if (known === null) return null;
  if (isTaken && known.whereabouts.place === 'on-shelf')
    return <p className="pt-3">{number} stands on a shelf again.</p>;
  const others = offered.flatMap(({ motor, whereabouts }) =>
    whereabouts.place === 'on-shelf' && motor.id !== known.motor.id ? [motor] : [],
  );
  const lost = coverLost(known.motor, sets, others, settings, today(timezone));
  const none = lost.filter(({ left }) => left === 0).length;
  return (
    <>
      <p className="pt-3">
        {lost.length === 0
          ? `Every set that ${number} could go into has ${COUNTED_TO} or more shelf motors left that can go in.`
          : `${none === 0 ? 'No set' : none === 1 ? '1 set' : `${none} sets`}${isTaken ? ' without any shelf motor now' : ' would have no shelf motor left'}; ${lost.length - none} with fewer than ${COUNTED_TO}. As the shelves stand now.`}
        {!isAll && ` Of the ${sets.length} most critical sets.`}
      </p>
      <ul className="lines">
        {lost.slice(0, SHOWN).map((one) => (
          <LostLine key={one.of.setId} one={one} />
        ))}
      </ul>
      {lost.length > SHOWN && <p className="label pt-2">and {lost.length - SHOWN} more</p>}
    </>
  );
}

function LostLine({ one: { of, left } }: { one: CoverLost }) {
  return (
    <li className={left === 0 ? 'urgent' : undefined}>
      <p className="line-name">
        <Link href={candidatesPath(of.tag)}>
          <bdi>{of.tag}</bdi>
        </Link>
      </p>
      <span className="line-aside">{left === 0 ? <b>none left</b> : `${left} left`}</span>
      <p className="line-below">
        {of.criticality === null ? 'criticality not told' : `criticality ${of.criticality} of 4`}
        {of.service !== null && (
          <>
            , <bdi>{of.service}</bdi>
          </>
        )}
      </p>
    </li>
  );
}
