import type { Motor } from '@/lib/plant/motor';
import type { RepairFigures } from '@/lib/plant/repair-figures';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import type { RepairCase } from './repair-or-replace';

export interface CaseWithOrigins {
  told: RepairCase;
  /** Where each figure that nobody told comes from; a figure not known anywhere has none. */
  from: Partial<Record<keyof RepairCase, string>>;
}

/** What a person told, filled up from the plate, the site and the standard; the change by the repair and the load never. */
export function repairCaseOf(motor: Motor, figures: RepairFigures, settings: SiteSettings): CaseWithOrigins {
  const row = motor.ratings.find(({ kw }) => kw !== null) ?? null;
  const from: CaseWithOrigins['from'] = {};
  const filled = (key: keyof RepairCase, told: number | null, other: number | null, origin: string) => {
    if (told === null && other !== null) from[key] = origin;
    return told ?? other;
  };
  const nominal = nominalOf(motor, row?.kw ?? null, row?.hertz ?? null);
  const { repairCost, newPrice, changePts, loadPct, years, isRewind } = figures;
  const told: RepairCase = {
    ...{ repairCost, newPrice, changePts, loadPct, years, isRewind },
    ratedKw: filled('ratedKw', null, row?.kw ?? null, 'from the plate'),
    efficiencyPct: filled('efficiencyPct', figures.efficiencyPct, row?.efficiencyPct ?? null, 'from the plate'),
    newEfficiencyPct: filled(
      'newEfficiencyPct',
      figures.newEfficiencyPct,
      nominal === null ? null : nominal.pct,
      nominal === null ? '' : `nominal of the class: ${nominal.cite}`,
    ),
    hoursPerYear: filled('hoursPerYear', figures.hoursPerYear, settings.hoursPerYear, 'from the site’s settings'),
    pricePerKwh: filled('pricePerKwh', figures.pricePerKwh, settings.pricePerKwh, 'from the site’s settings'),
  };
  return { told, from };
}

/** What is sold new today: premium efficiency at 60 Hz, IE3 at 50 Hz. */
function nominalOf({ poles, enclosure }: Motor, kw: number | null, hertz: number | null) {
  if (poles === null || kw === null || (hertz !== 50 && hertz !== 60)) return null;
  const build = enclosure === 'ODP' || enclosure === 'DP' ? 'open' : 'enclosed';
  return nominalEfficiency(hertz === 60 ? 'premium' : 'IE3', kw, poles, build);
}
