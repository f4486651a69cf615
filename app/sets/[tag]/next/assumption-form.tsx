import { ActionButton } from '@/app/look/action';
import { Facts } from '@/app/look/facts';
import { Field } from '@/app/look/field';
import { SectionHead } from '@/app/look/section-head';
import { nextPath } from '@/app/paths';
import { figure } from '@/lib/units/figure';
import type { Assumption } from './assumptions';

/** Every figure that the sums rest on, each to be changed for this page alone. */
export function AssumptionForm({
  tag,
  assumptions,
  currency,
}: {
  tag: string;
  assumptions: readonly Assumption[];
  currency: string | null;
}) {
  return (
    <section>
      <SectionHead title="What it rests on" aside="changed here, it holds for this page alone" />
      <form action={nextPath(tag)} className="filters with-hints screen-only">
        {assumptions.map((one) => (
          <Field
            key={one.name}
            label={one.label}
            name={one.name}
            unit={unitOf(one, currency)}
            inputMode={one.name === 'growth' ? 'text' : 'decimal'}
            autoComplete="off"
            maxLength={24}
            defaultValue={one.typed}
            error={one.error}
            hint={hintOf(one)}
          />
        ))}
        <ActionButton second>Work it out</ActionButton>
      </form>
      <div className="print-only">
        <Facts rows={assumptions.map((one) => ({ label: one.label, value: printed(one, currency) }))} />
      </div>
    </section>
  );
}

const unitOf = ({ unit }: Assumption, currency: string | null) => (unit === 'money' ? (currency ?? 'money') : unit);

/** On paper nothing can be typed: the figure itself stands there, and whose it is. */
function printed(one: Assumption, currency: string | null): string {
  if (one.value === null) return 'not told';
  const whose = one.from === 'address' ? 'typed for this page' : 'of the site’s settings';
  return `${figure(one.value, 4)} ${unitOf(one, currency)}, ${whose}`;
}

function hintOf({ from, value }: Assumption): string {
  switch (from) {
    case 'address':
      return 'As typed here.';
    case 'site':
      return `The site’s settings: ${value === null ? 'none' : figure(value, 4)}.`;
    case 'nobody':
      return 'Not told: what rests on it is left out.';
  }
}
