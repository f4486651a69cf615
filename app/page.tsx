import Link from 'next/link';
import { areas } from '@/lib/register/queries/areas';
import { overview } from '@/lib/register/queries/overview';
import { recentSets } from '@/lib/register/queries/recent-sets';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from './answered';
import { FindForm } from './find-form';
import { Facts, Figures } from './look/facts';
import { SectionHead } from './look/section-head';
import { Sheet } from './look/sheet';
import { SetList } from './set-list';
import { personOf, whoMay } from './who-is-here';

export default answered(async function RegisterPage() {
  const actor = await whoMay('register.read', '/');
  const [site, recent, counts, places] = await Promise.all([
    siteSettings(actor),
    recentSets(actor),
    overview(actor),
    areas(actor),
  ]);
  return (
    <Sheet wide current="/" person={personOf(actor)}>
      <h1 className="page">
        <bdi>{site.name}</bdi>
      </h1>
      <FindForm />
      <p className="pt-3">
        <Link className="to" href="/pump" prefetch={false}>
          At the pump
        </Link>{' '}
        <span className="label">the same on your phone, with or without a network</span>
      </p>
      <div className="cols">
        <section>
          <SectionHead
            title="Down, and last changed"
            aside={
              <Link className="to" href="/faults">
                {openWords(counts.openFaults)}
              </Link>
            }
          />
          {recent.length === 0 ? (
            <p className="pt-3">No set is in the register yet.</p>
          ) : (
            <SetList sets={recent} timezone={site.timezone} />
          )}
        </section>
        <div>
          <SectionHead title="In the register" />
          <Figures
            cells={[
              { label: 'Sets', value: String(counts.sets) },
              { label: 'Without a motor', value: String(counts.setsWithoutMotor) },
              { label: 'Swaps in 30 days', value: String(counts.swapsInThirtyDays) },
              { label: 'Motors on a shelf', value: count(counts.motors['on-shelf']) },
              { label: 'At repair', value: count(counts.motors['at-repair']) },
              { label: 'On order', value: count(counts.motors['on-order']) },
            ]}
          />
          <SectionHead title="Areas" />
          <Facts
            rows={places.map(({ areaId, name, sets }) => ({
              label: name,
              value: (
                <Link className="to" href={`/sets?area=${areaId}`}>
                  {sets === 1 ? '1 set' : `${sets} sets`}
                  <span className="vh"> in {name}</span>
                </Link>
              ),
            }))}
          />
        </div>
      </div>
    </Sheet>
  );
});

const openWords = (open: number) =>
  open === 0 ? 'no fault is open' : open === 1 ? '1 fault open' : `${open} faults open`;

/** A place with no motor is not named by the register: there it is none, not unknown. */
const count = (motors: number | undefined) => (motors === undefined ? '0' : String(motors));
