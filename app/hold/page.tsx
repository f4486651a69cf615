import type { Metadata } from 'next';
import { areas } from '@/lib/register/queries/areas';
import { hold } from '@/lib/register/queries/hold';
import { setsToHold } from '@/lib/register/queries/sets-to-hold';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import type { Query } from '../lists/asked-for';
import { NotReadNote } from '../lists/not-read-note';
import { PrintedLine } from '../lists/printed-line';
import { ProblemList } from '../look/problem-list';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { holdAsked } from './asked-of';
import { mayBeHeld, setsInWords } from './asked-words';
import { BeforeChoice } from './before-choice';
import { HoldAnswerParts } from './hold-answer';
import { HoldForm } from './hold-form';
import { SetTicks } from './set-ticks';

export const metadata: Metadata = { title: 'What to hold' };

/** Which motors to hold for some sets, as few or as cheap as can be proven, and how many of each. */
export default answered(async function HoldPage({ searchParams }: PageProps<'/hold'>) {
  const query = await searchParams;
  const actor = await whoMay('register.read', `/hold${questionOf(query)}`);
  const [places, { name, timezone, settings }] = await Promise.all([areas(actor), siteSettings(actor)]);
  const asked = holdAsked(query, settings.workPerHour);
  const currency = settings.currency === null ? 'money' : settings.currency;
  const isAsked = query.choose !== undefined && query.tick === undefined;
  const done = isAsked ? await hold(actor, asked) : null;
  const toHold = done === null ? await setsToHold(actor, asked) : done.toHold;
  const problems = done?.outcome === 'refused' ? done.problems : asked.unread;
  const answer = done?.outcome === 'chosen' ? done.answer : null;
  const isLooking = query.tick !== undefined || query.show !== undefined || toHold.taking.length === 0;
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">What to hold</h1>
      <p className="mt-2">
        The fewest or cheapest motors that together could go into every set asked for, by the whole judgement of each
        pair; chosen by integer programming, with what is proven. A proposal: a competent person decides.
      </p>
      <ProblemList problems={problems} />
      <NotReadNote query={query} read={{ area: asked.sets.areaId, criticality: asked.sets.criticality }} />
      <PrintedLine site={name} timezone={timezone} asked={setsInWords(asked, places)} />
      <p className="print-only label">{mayBeHeld(asked)}</p>
      <HoldForm asked={asked} query={query} problems={problems} areas={places} currency={currency}>
        <BeforeChoice toHold={toHold} from={asked.options.from} />
        <SetTicks toHold={toHold} filter={asked.sets} answer={answer} isOpen={isLooking} />
      </HoldForm>
      {answer !== null && <HoldAnswerParts answer={answer} asked={asked} currency={currency} />}
    </Sheet>
  );
});

/** The question as it came, to be asked again after a sign-in. */
function questionOf(query: Query): string {
  const params = new URLSearchParams();
  for (const [name, value] of Object.entries(query))
    for (const one of value === undefined ? [] : Array.isArray(value) ? value : [value]) params.append(name, one);
  const text = params.toString();
  return text === '' ? '' : `?${text}`;
}
