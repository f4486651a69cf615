import type { AskField } from '@/app/ask-state';
import type { RepairFigures } from '@/lib/plant/repair-figures';
import { MEASURED_CHANGE } from '@/lib/repair/customary-rules';
import { figure } from '@/lib/units/figure';

type FigureName = Exclude<keyof RepairFigures, 'isRewind'>;

/** The figures a person tells, with the bounds within which they are read. */
export const FIGURES: readonly {
  name: FigureName;
  label: string;
  unit: string;
  min: number;
  max: number;
  hint?: string;
}[] = [
  { name: 'repairCost', label: 'The repair costs', unit: '', min: 0, max: 1e8 },
  { name: 'newPrice', label: 'A new motor costs', unit: '', min: 0, max: 1e8 },
  { name: 'efficiencyPct', label: 'Efficiency before', unit: '%', min: 1, max: 100, hint: 'Empty: as on the plate.' },
  {
    ...{ name: 'changePts', label: 'Change by the repair', unit: 'points', min: -10, max: 10 },
    hint: `A loss is below zero. Measured after rewinds by good practice: ${figure(MEASURED_CHANGE.fromPts)} to +${figure(MEASURED_CHANGE.toPts)}, on average ${figure(MEASURED_CHANGE.meanPts)}.`,
  },
  {
    name: 'newEfficiencyPct',
    label: 'Efficiency of a new one',
    unit: '%',
    min: 1,
    max: 100,
    hint: 'Empty: the nominal of its class.',
  },
  { name: 'loadPct', label: 'Load', unit: '% of rated', min: 1, max: 150 },
  { name: 'hoursPerYear', label: 'Hours run in a year', unit: 'h', min: 0, max: 8_784 },
  { name: 'pricePerKwh', label: 'Price of a kWh', unit: '', min: 0, max: 10 },
  { name: 'years', label: 'Years looked ahead', unit: 'years', min: 1, max: 40 },
];

export const FIGURE_LABELS = Object.fromEntries(FIGURES.map(({ name, label }) => [name, label])) as Record<
  FigureName,
  string
>;

/** The figures as fields of a form; money in the site's currency. */
export const figureFields = (told: RepairFigures, currency: string | null): AskField[] =>
  FIGURES.map(({ name, label, unit, hint }): AskField => {
    const value = told[name];
    const shown = unit === '' ? (currency ?? 'money') : unit;
    return {
      ...{ kind: 'text', name, label, unit: shown, autoComplete: 'off' },
      ...(hint !== undefined && { hint }),
      ...(value !== null && { value: String(value) }),
    };
  });
