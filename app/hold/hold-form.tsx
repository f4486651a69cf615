import type { ReactNode } from 'react';
import type { HoldAsked, HoldProblem } from '@/lib/register/hold-asked';
import type { KnownArea } from '@/lib/register/queries/areas';
import { publishedRates } from '@/lib/standards/published-rates';
import type { Query } from '../lists/asked-for';
import { AreaField, CriticalityField } from '../lists/place-fields';
import { ActionButton } from '../look/action';
import { Choice } from '../look/choice';
import { Field, SelectField, TextAreaField } from '../look/field';
import { typedOf } from './asked-of';
import {
  AIM_WORDS,
  CHANCES,
  CHECK_WORDS,
  FIGURES,
  FIT_WORDS,
  type FigureName,
  MOST_PRICE_SIGNS,
  SECONDS,
  SOURCE_WORDS,
} from './hold-words';

const optionsOf = (words: Record<string, string>) =>
  Object.entries(words).map(([value, said]) => ({ value, words: said }));

/**
 * What the choice is made for and by: every figure can be changed, and stands in the address. What was typed stays as it
 * was typed, with what is wrong with it below. `children`: the boxes of the sets.
 */
export function HoldForm({
  asked,
  query,
  problems,
  areas,
  currency,
  children,
}: {
  asked: HoldAsked;
  query: Query;
  problems: readonly HoldProblem[];
  areas: readonly KnownArea[];
  currency: string;
  children: ReactNode;
}) {
  const { sets, options, price } = asked;
  const wrong = (name: string) => {
    const own = problems.filter(({ path }) => path === name);
    return own.length === 0 ? null : own.map(({ says }) => says).join(' ');
  };
  const figure = (name: FigureName, unit: string, now: number | null) => {
    const typed = typedOf(query, name);
    return (
      <Field
        {...{ label: FIGURES[name].label, name, unit, inputMode: 'decimal', maxLength: 24, autoComplete: 'off' }}
        defaultValue={typed === '' ? now : typed}
        error={wrong(name)}
      />
    );
  };
  return (
    <form action="/hold" id="hold" className="in-groups">
      <Group legend="For which sets">
        <Field label="Words" name="q" type="search" defaultValue={sets.q} maxLength={100} autoComplete="off" />
        <Field
          label="Only these tags"
          name="tags"
          defaultValue={sets.tags.join(', ')}
          maxLength={2_000}
          autoComplete="off"
        />
        <AreaField areas={areas} areaId={sets.areaId} />
        <CriticalityField criticality={sets.criticality} />
      </Group>
      <Group legend="What may be held">
        <SelectField label="Aim" name="aim" options={optionsOf(AIM_WORDS)} defaultValue={options.aim} />
        <SelectField label="From" name="from" options={optionsOf(SOURCE_WORDS)} defaultValue={options.from} />
        <SelectField label="Work" name="fit" options={optionsOf(FIT_WORDS)} defaultValue={options.fit} />
        <SelectField label="Checks" name="checks" options={optionsOf(CHECK_WORDS)} defaultValue={options.checks} />
        {figure('hours', 'h', options.mostHours)}
        {figure('lead', 'days', options.mostLeadDays)}
      </Group>
      {options.without.length > 0 && (
        <div className="screen-only">
          <Choice
            legend="Left out, and not to be held"
            name="without"
            kind="many"
            options={[...new Set(options.without)].map((name) => ({ value: name, words: <bdi>{name}</bdi> }))}
            chosen={options.without}
          />
        </div>
      )}
      <Group legend="What it costs">
        {figure('each', currency, price.each)}
        {figure('perKw', currency, price.perKw)}
        {figure('perHour', currency, options.perHour)}
        {figure('years', 'years', options.years)}
        <PriceListField typed={typedOf(query, 'prices')} error={wrong('prices')} currency={currency} />
      </Group>
      <Group legend="How many of each, and how long to look">
        <SelectField
          label="Published rate"
          name="rate"
          options={publishedRates(null).map(({ id, what }) => ({ value: id, words: what }))}
          defaultValue={asked.rate}
        />
        {figure('prior', 'set-years', asked.priorYears)}
        {figure('days', 'days', asked.days)}
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
      </Group>
      <p className="flex flex-wrap gap-2 pt-2 print:hidden">
        <ActionButton name="choose" value="1">
          Choose
        </ActionButton>
        <ActionButton second name="show" value="1">
          Show the sets
        </ActionButton>
      </p>
      {children}
    </form>
  );
}

function Group({ legend, children }: { legend: string; children: ReactNode }) {
  return (
    <fieldset className="screen-only">
      <legend className="group">{legend}</legend>
      <div className="filters">{children}</div>
    </fieldset>
  );
}

function PriceListField({ typed, error, currency }: { typed: string; error: string | null; currency: string }) {
  return (
    <TextAreaField
      label={`Price list, ${currency}`}
      name="prices"
      rows={4}
      maxLength={MOST_PRICE_SIGNS}
      defaultValue={typed}
      error={error}
      hint="What it names goes before the two figures above. A line a rating, as it is stamped, kW or hp: “5.5 kW: 640”, “7.5 hp, 4 poles, 213T: 720”, “5.5 kW, washdown: 980”. A line is of plain motors unless it says washdown, area or brake. Of lines that name a motor the one that tells most counts."
    />
  );
}
