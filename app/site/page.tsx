import type { Metadata } from 'next';
import { may } from '@/lib/auth/may';
import { WORK_IDS } from '@/lib/plant/work';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { Facts } from '../look/facts';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { nameOf } from './read-settings-form';
import { SettingsForm } from './settings-form';
import { hourField, valuesOf } from './settings-state';
import { SITE_SECTIONS, unitShown } from './site-figures';

export const metadata: Metadata = { title: 'Site' };

/** What the site decides for itself: hours of work, limits, prices. Everybody may see it. */
export default answered(async function SitePage() {
  const actor = await whoMay('register.read', '/site');
  const { name, timezone, settings, version } = await siteSettings(actor);
  const values = valuesOf(settings);
  const told = (path: string, unit: string) => (values[path] ? `${values[path]} ${unit}` : 'not set');
  return (
    <Sheet person={personOf(actor)} back={{ href: '/person', words: 'Signed in' }} wide>
      <h1 className="page">
        <bdi>{name}</bdi>
      </h1>
      <p className="label">Time of {timezone}</p>
      {may(actor, 'settings.edit') ? (
        <SettingsForm values={values} version={version} />
      ) : (
        <>
          <SectionHead title="Hours of work" aside="an administrator sets these" />
          <Facts rows={WORK_IDS.map((id) => ({ label: nameOf(id), value: told(hourField(id), 'h') }))} />
          {SITE_SECTIONS.map(({ title, figures }) => (
            <section key={title}>
              <SectionHead title={title} />
              <Facts
                rows={figures.map(({ name, label, unit }) => ({
                  label,
                  value: told(name, unitShown(unit, settings.currency)),
                }))}
              />
            </section>
          ))}
          <Facts
            rows={[
              {
                label: 'A motor whose plate prints no efficiency counts as',
                value: settings.unprintedClass ?? 'not known',
              },
            ]}
          />
        </>
      )}
    </Sheet>
  );
});
