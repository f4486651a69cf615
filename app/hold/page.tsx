import type { Metadata } from 'next';
import { areas } from '@/lib/register/queries/areas';
import { hold } from '@/lib/register/queries/hold';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import type { Query } from '../lists/asked-for';
import { ProblemList } from '../look/problem-list';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { HoldAnswerParts } from './hold-answer';
import { HoldForm } from './hold-form';
import { holdAsked } from './hold-words';

export const metadata: Metadata = { title: 'What to hold' };

/** Which motors to hold for some sets, as few or as cheap as can be proven, and how many of each. */
export default answered(async function HoldPage({ searchParams }: PageProps<'/hold'>) {
  const query = await searchParams;
  const actor = await whoMay('register.read', `/hold${questionOf(query)}`);
  const [places, { settings }] = await Promise.all([areas(actor), siteSettings(actor)]);
  const asked = holdAsked(query, settings.workPerHour);
  const currency = settings.currency === null ? 'money' : settings.currency;
  const done = query.choose === undefined ? null : await hold(actor, asked);
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">What to hold</h1>
      <p className="mt-2">
        The fewest or cheapest motors that together could go into every set asked for, by the whole judgement of each
        pair; chosen by integer programming, with what is proven. A proposal: a competent person decides.
      </p>
      <HoldForm asked={asked} areas={places} currency={currency} />
      {done?.outcome === 'refused' && <ProblemList problems={done.problems} />}
      {done?.outcome === 'chosen' && <HoldAnswerParts answer={done.answer} asked={asked} currency={currency} />}
    </Sheet>
  );
});

/** The question as it came, to be asked again after a sign-in. */
function questionOf(query: Query): string {
  const params = new URLSearchParams();
  for (const [name, value] of Object.entries(query))
    if (value !== undefined) params.set(name, Array.isArray(value) ? value.join(',') : value);
  const text = params.toString();
  return text === '' ? '' : `?${text}`;
}
