import { SectionHead } from '@/app/look/section-head';
import { classCosts } from '@/lib/energy/class-costs';
import { type Alternatives, nextFailure } from '@/lib/energy/next-failure/next-failure';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { figure } from '@/lib/units/figure';
import { ClassTable } from './class-table';
import { LifeCycleTable } from './life-cycle-table';
import { MomentTable } from './moment-table';
import { reasonsOf, sourcesOf } from './shown';
import { SpeedTable } from './speed-table';

/** The tables of the page, and why what is not known is not. */
export function NextSums({
  set,
  motor,
  alternatives,
  settings,
  criticality,
}: {
  set: PumpSet;
  motor: Motor;
  alternatives: Alternatives;
  settings: SiteSettings;
  criticality: number;
}) {
  const { now, rows } = nextFailure(set, motor, alternatives, settings, criticality);
  const money = settings.currency ?? 'money';
  const costs = classCosts(set, motor, settings, now.loadPct.value);
  const reasons = reasonsOf(rows);
  const notes = [...new Set(rows.flatMap((row) => row.notes))];
  return (
    <>
      <SectionHead
        title="Tonight, next time, repaired"
        aside={now.loadPct.value === null ? undefined : `loaded to ${figure(now.loadPct.value, 1)} %`}
      />
      <MomentTable now={now} motor={motor.id} rows={rows} money={money} />
      {alternatives.onShelf.length === 0 && <p className="pt-3">Nothing on the shelves fits tonight.</p>}
      {alternatives.toBuy.length === 0 && <p className="pt-3">No standard rating to buy answers this set.</p>}
      {now.assumes !== null && <p className="label pt-2">Assumes: {now.assumes}.</p>}
      {sourcesOf(rows).map(({ what, from }) => (
        <p key={`${what} ${from}`} className="label pt-2">
          {what}: {from}.
        </p>
      ))}
      {reasons.length > 0 && (
        <>
          <p className="pt-3">Why a figure is not known:</p>
          <ul className="cautions">
            {reasons.map((reason) => (
              <li key={reason}>{reason}</li>
            ))}
          </ul>
        </>
      )}
      <SectionHead title="What its speed takes" aside="a better motor slips less and runs faster" />
      <SpeedTable rows={rows} />
      <p className="label pt-2">
        {set.load.kind === 'quadratic'
          ? 'A centrifugal pump asks power with the cube of speed: P₂ = P₁ (n₂ / n₁)³. A smaller sheave or a trimmed impeller gives it back.'
          : 'Where torque is constant, power goes with the speed: P₂ = P₁ n₂ / n₁, and so does the flow.'}
      </p>
      <SectionHead title="A year at part load, by class" aside="nominal figures of IEC 60034-30-1 or NEMA MG 1" />
      <ClassTable costs={costs} money={money} />
      <p className="label pt-2">
        Carried from full load to each load by the US DOE fact sheet, Figure 1 (read in one text); all hours run at that
        load.
      </p>
      <SectionHead title="Life-cycle cost" aside="present value" />
      <LifeCycleTable rows={rows} money={money} />
      {notes.map((note) => (
        <p key={note} className="label pt-2">
          {note}
        </p>
      ))}
    </>
  );
}
