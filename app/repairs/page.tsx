import type { Metadata } from 'next';
import Link from 'next/link';
import { type MotorAtRepair, repairs } from '@/lib/register/queries/repairs';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { lastedText } from '../lasted';
import { Figures } from '../look/facts';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { dayText } from '../moment';
import { motorPath } from '../paths';
import { personOf, whoMay } from '../who-is-here';

export const metadata: Metadata = { title: 'Motors at repair' };

/** Every motor at repair, those that wait longest first, and what each waits for. */
export default answered(async function RepairsPage() {
  const actor = await whoMay('register.read', '/repairs');
  const [{ motors, all }, { settings, timezone }] = await Promise.all([repairs(actor), siteSettings(actor)]);
  const known = motors.flatMap(({ repair }) => repair?.figures.repairCost ?? []);
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">Motors at repair</h1>
      <Figures
        cells={[
          { label: 'At repair', value: String(all) },
          {
            label: 'Not decided',
            value: String(motors.filter(({ repair }) => (repair?.decision ?? null) === null).length),
          },
          {
            label: `Offered for ${known.length} of them`,
            value: known.length === 0 ? null : String(Math.round(known.reduce((sum, cost) => sum + cost, 0))),
            ...(settings.currency !== null && { unit: settings.currency }),
          },
        ]}
      />
      <SectionHead title="Longest first" aside={motors.length < all ? `${motors.length} of ${all}` : all} />
      {motors.length === 0 && <p className="pt-3">No motor is at repair.</p>}
      <ul className="lines">
        {motors.map((motor) => (
          <li key={motor.plantNumber}>
            <p className="line-name">
              <Link href={`${motorPath(motor.plantNumber)}#repair`}>
                <bdi>{motor.plantNumber}</bdi>
              </Link>
            </p>
            <span className="line-aside">
              {motor.repair === null ? 'since when is not told' : lastedText(Date.now() - motor.repair.at.getTime())}
            </span>
            <p className="line-below">
              <bdi>{motor.repair === null ? 'Why is not told' : motor.repair.reason}</bdi>
              {motor.repair !== null && `, since ${dayText(motor.repair.at, timezone)}`}
            </p>
            <p className="line-below">{waitsFor(motor)}</p>
          </li>
        ))}
      </ul>
    </Sheet>
  );
});

function waitsFor({ repair, frame }: MotorAtRepair): string {
  const of = [frame, repair?.setTag == null ? null : `out of ${repair.setTag}`].filter((text) => text !== null);
  const what =
    repair === null || repair.decision === null
      ? repair?.figures.repairCost == null
        ? 'waits for an offer'
        : 'waits for a decision'
      : repair.decision === 'scrap'
        ? 'waits to be scrapped'
        : 'waits to come back';
  return [...of, what].join(', ');
}
