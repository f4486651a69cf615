import type { HoldAsked } from '@/lib/register/hold-asked';
import type { KnownArea } from '@/lib/register/queries/areas';
import { publishedRates } from '@/lib/standards/published-rates';
import { ActionButton } from '../look/action';
import { Field, SelectField } from '../look/field';
import { AIM_WORDS, CHANCES, CHECK_WORDS, FIT_WORDS, SECONDS, SOURCE_WORDS } from './hold-words';

const optionsOf = (words: Record<string, string>) =>
  Object.entries(words).map(([value, said]) => ({ value, words: said }));

/** What the choice is made for and by: every figure can be changed, and stands in the address. */
export function HoldForm({
  asked,
  areas,
  currency,
}: {
  asked: HoldAsked;
  areas: readonly KnownArea[];
  currency: string;
}) {
  const { sets, options, price } = asked;
  const figure = { inputMode: 'decimal', maxLength: 10, autoComplete: 'off' } as const;
  return (
    <form action="/hold" className="filters">
      <input type="hidden" name="choose" value="1" />
      <Field label="Words" name="q" type="search" defaultValue={sets.q} maxLength={100} autoComplete="off" />
      <SelectField
        label="Area"
        name="area"
        empty="All areas"
        options={areas.map(({ areaId, name }) => ({ value: areaId, words: name }))}
        defaultValue={sets.areaId ?? ''}
      />
      <SelectField
        label="Criticality"
        name="criticality"
        empty="Any"
        options={['1', '2', '3', '4'].map((value) => ({ value, words: value }))}
        defaultValue={sets.criticality === null ? '' : String(sets.criticality)}
      />
      <Field
        label="Only these tags"
        name="tags"
        defaultValue={sets.tags.join(', ')}
        maxLength={2_000}
        autoComplete="off"
      />
      <SelectField label="Aim" name="aim" options={optionsOf(AIM_WORDS)} defaultValue={options.aim} />
      <SelectField label="From" name="from" options={optionsOf(SOURCE_WORDS)} defaultValue={options.from} />
      <SelectField label="Work" name="fit" options={optionsOf(FIT_WORDS)} defaultValue={options.fit} />
      <Field label="Of a swap at most" name="hours" unit="h" defaultValue={options.mostHours} {...figure} />
      <SelectField label="Checks" name="checks" options={optionsOf(CHECK_WORDS)} defaultValue={options.checks} />
      <Field label="Delivered within" name="lead" unit="days" defaultValue={options.mostLeadDays} {...figure} />
      <Field label="Price of one, each" name="each" unit={currency} defaultValue={price.each} {...figure} />
      <Field label="and for each kW" name="perKw" unit={currency} defaultValue={price.perKw} {...figure} />
      <Field label="An hour of work" name="perHour" unit={currency} defaultValue={options.perHour} {...figure} />
      <Field label="Swaps counted over" name="years" unit="years" defaultValue={options.years} {...figure} />
      <Field label="Made good in" name="days" unit="days" defaultValue={asked.days} {...figure} />
      <SelectField
        label="Published rate"
        name="rate"
        options={publishedRates(null).map(({ id, what }) => ({ value: id, words: what }))}
        defaultValue={asked.rate}
      />
      <Field label="taken as seen in" name="prior" unit="set-years" defaultValue={asked.priorYears} {...figure} />
      <SelectField
        label="Chance that none waits"
        name="chance"
        options={CHANCES.map((one) => ({ value: String(one), words: `${one} %` }))}
        defaultValue={String(Math.round(asked.chance * 100))}
      />
      <SelectField
        label="Solver’s time"
        name="seconds"
        options={SECONDS.map((one) => ({ value: String(one), words: `${one} s` }))}
        defaultValue={String(asked.seconds)}
      />
      <ActionButton second>Choose</ActionButton>
    </form>
  );
}
