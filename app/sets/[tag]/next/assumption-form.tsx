import { ActionButton } from '@/app/look/action';
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
      <form action={nextPath(tag)} className="filters">
        {assumptions.map((one) => (
          <Field
            key={one.name}
            label={one.label}
            name={one.name}
            unit={one.unit === 'money' ? (currency ?? 'money') : one.unit}
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
    </section>
  );
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
