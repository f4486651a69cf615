import { Facts } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { MEASURED_CHANGE } from '@/lib/repair/customary-rules';
import type { CaseWithOrigins } from '@/lib/repair/repair-case';
import { type RuleAnswer, repairOrReplace } from '@/lib/repair/repair-or-replace';
import { figure } from '@/lib/units/figure';

const NOT_KNOWN = 'not known: a figure is missing';

/** Repair or a new motor, in figures, and what each customary rule says of it. No verdict is made of them. */
export function RepairWorkedOut({ told, from, currency }: CaseWithOrigins & { currency: string | null }) {
  const out = repairOrReplace(told);
  const unit = currency === null ? '' : ` ${currency}`;
  const money = (value: number | null) => (value === null ? NOT_KNOWN : `${figure(value, 0)}${unit}`);
  const shown = (value: number | null, of: string, origin?: string) =>
    value === null ? 'not told' : `${figure(value)} ${of}${origin === undefined ? '' : `, ${origin}`}`;
  return (
    <>
      <SectionHead title="Repair or a new one" aside="figures, no verdict" />
      <Facts
        rows={[
          { label: 'Rated power', value: shown(told.ratedKw, 'kW', from.ratedKw) },
          { label: 'Load', value: shown(told.loadPct, '%') },
          { label: 'Efficiency before', value: shown(told.efficiencyPct, '%', from.efficiencyPct) },
          { label: 'Change by the repair', value: shown(told.changePts, 'points, as told') },
          { label: 'Efficiency of a new one', value: shown(told.newEfficiencyPct, '%', from.newEfficiencyPct) },
          { label: 'Hours in a year', value: shown(told.hoursPerYear, 'h', from.hoursPerYear) },
          { label: 'Price of a kWh', value: shown(told.pricePerKwh, unit.trim(), from.pricePerKwh) },
          {
            label: 'The repair, of a new motor',
            value: out.costSharePct === null ? NOT_KNOWN : `${figure(out.costSharePct, 0)} %`,
          },
          { label: 'A new one costs more', value: money(out.extraCost) },
          {
            label: 'The repaired one takes more',
            value: out.moreKwhPerYear === null ? NOT_KNOWN : `${figure(out.moreKwhPerYear, 0)} kWh a year`,
          },
          {
            label: 'Which is',
            value: out.moreCostPerYear === null ? NOT_KNOWN : `${money(out.moreCostPerYear)} a year`,
          },
          {
            label: 'A new one has paid that after',
            value: out.isNeverPaidBack
              ? 'never: it saves nothing'
              : out.paybackYears === null
                ? NOT_KNOWN
                : `${figure(out.paybackYears, 1)} years`,
          },
          {
            label: told.years === null ? 'Saved by a new one' : `Saved by a new one in ${figure(told.years)} years`,
            value: money(out.savedByNew),
          },
        ]}
      />
      <SectionHead title="Customary rules" aside="they may contradict each other" />
      <ul className="history">
        {out.rules.map(({ rule, answer }) => (
          <li key={rule.id}>
            <p>
              {rule.says}: <b>{ANSWERS[answer]}</b>
            </p>
            <p className="label">{rule.source}</p>
          </li>
        ))}
      </ul>
      <p className="label pt-3">
        Change by a rewind: {MEASURED_CHANGE.source}. Undiscounted, at one price; the wait, the slip and the spare that
        is missing meanwhile are not in it. A competent person decides.
      </p>
    </>
  );
}

const ANSWERS: Record<RuleAnswer, string> = {
  repair: 'repair',
  replace: 'replace',
  'not-asked': 'not asked of this repair',
  'not-known': 'not known: a figure is missing',
};
