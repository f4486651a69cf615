import { simplePayback } from '@/lib/energy/simple-payback';
import { CUSTOMARY_RULES, type CustomaryRule } from './customary-rules';

/** What repair and replacement cost and run at. Null: not known, and then nothing that rests on it is told. */
export interface RepairCase {
  repairCost: number | null;
  newPrice: number | null;
  ratedKw: number | null;
  /** Share of the rated power that the shaft gives, %. */
  loadPct: number | null;
  /** Of the motor before it failed, and of the new one, at that load, %. */
  efficiencyPct: number | null;
  newEfficiencyPct: number | null;
  /** By the repair, in points of efficiency; a loss is below zero. */
  changePts: number | null;
  hoursPerYear: number | null;
  pricePerKwh: number | null;
  years: number | null;
  /** Whether the winding is to be renewed; null: not told. */
  isRewind: boolean | null;
}

export type RuleAnswer = 'repair' | 'replace' | 'not-asked' | 'not-known';

export interface RepairWorkedOut {
  /** The repair against a new motor, %. */
  costSharePct: number | null;
  /** What the new motor costs more; below zero: less. */
  extraCost: number | null;
  repairedEfficiencyPct: number | null;
  /** What the repaired motor takes more in a year; below zero: less. */
  moreKwhPerYear: number | null;
  moreCostPerYear: number | null;
  /** The same over the years, less what the new motor costs more; above zero: the new one is cheaper in the end. */
  savedByNew: number | null;
  /** Years until the new motor has paid what it costs more. 0: it costs no more. Null: not known, or never. */
  paybackYears: number | null;
  /** The new motor costs more and saves nothing. */
  isNeverPaidBack: boolean;
  rules: { rule: CustomaryRule; answer: RuleAnswer; value: number | null }[];
}

/**
 * Repair against a new motor, in figures. Both motors at the same load and the hours of a year; undiscounted, at one price
 * of energy. A slower repaired motor, a longer wait and a lost spare are not in it.
 */
export function repairOrReplace(told: RepairCase): RepairWorkedOut {
  const { repairCost, newPrice, efficiencyPct, changePts, newEfficiencyPct, pricePerKwh, years } = told;
  const costSharePct = all({ repairCost, newPrice }, (of) => (100 * of.repairCost) / of.newPrice);
  const extraCost = all({ repairCost, newPrice }, (of) => of.newPrice - of.repairCost);
  const repairedEfficiencyPct = all({ efficiencyPct, changePts }, (of) =>
    Math.min(of.efficiencyPct + of.changePts, 100),
  );
  const { ratedKw, loadPct, hoursPerYear } = told;
  const moreKwhPerYear = all(
    { ratedKw, loadPct, hoursPerYear, repairedEfficiencyPct, newEfficiencyPct },
    (of) =>
      of.ratedKw * (of.loadPct / 100) * of.hoursPerYear * (100 / of.repairedEfficiencyPct - 100 / of.newEfficiencyPct),
  );
  const moreCostPerYear = all({ moreKwhPerYear, pricePerKwh }, (of) => of.moreKwhPerYear * of.pricePerKwh);
  const savedByNew = all({ moreCostPerYear, years, extraCost }, (of) => of.moreCostPerYear * of.years - of.extraCost);
  const payback = simplePayback(extraCost, moreCostPerYear);
  const worked = { costSharePct, extraCost, repairedEfficiencyPct, moreKwhPerYear, moreCostPerYear, savedByNew };
  const rules = CUSTOMARY_RULES.map((rule) => ({ rule, ...answerOf(rule, told, costSharePct, payback) }));
  return { ...worked, paybackYears: payback === 'never' ? null : payback, isNeverPaidBack: payback === 'never', rules };
}

function answerOf(
  { id, threshold }: CustomaryRule,
  { ratedKw, isRewind }: RepairCase,
  costSharePct: number | null,
  payback: number | 'never' | null,
): { answer: RuleAnswer; value: number | null } {
  switch (id) {
    case 'cost-half':
      return { answer: above(costSharePct, threshold), value: costSharePct };
    case 'cost-60':
      if (isRewind === false) return { answer: 'not-asked', value: costSharePct };
      return { answer: above(costSharePct, threshold), value: costSharePct };
    case 'small':
      if (isRewind === null || ratedKw === null) return { answer: 'not-known', value: ratedKw };
      return { answer: isRewind && ratedKw <= threshold ? 'replace' : 'repair', value: ratedKw };
    case 'payback':
      if (payback === 'never') return { answer: 'repair', value: null };
      if (payback === null) return { answer: 'not-known', value: null };
      return { answer: payback <= threshold ? 'replace' : 'repair', value: payback };
  }
}

const above = (value: number | null, threshold: number): RuleAnswer =>
  value === null ? 'not-known' : value > threshold ? 'replace' : 'repair';

/** Of figures that are all known; null when one is not. */
function all<T extends Record<string, number | null>>(
  figures: T,
  of: (known: { [K in keyof T]: number }) => number,
): number | null {
  return Object.values(figures).includes(null) ? null : of(figures as { [K in keyof T]: number });
}
