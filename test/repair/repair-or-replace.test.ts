import { describe, expect, test } from 'vitest';
import { CUSTOMARY_RULES, MEASURED_CHANGE } from '@/lib/repair/customary-rules';
import { type RepairCase, repairOrReplace } from '@/lib/repair/repair-or-replace';

const HP = 0.746; // as the worked example has it

const easy: RepairCase = {
  ...{ repairCost: 600, newPrice: 1_500, ratedKw: 15, loadPct: 75, efficiencyPct: 90, newEfficiencyPct: 93 },
  ...{ changePts: -0.5, hoursPerYear: 6_000, pricePerKwh: 0.12, years: 10, isRewind: true },
};
const worked = (differs: Partial<RepairCase> = {}) => repairOrReplace({ ...easy, ...differs });
const answerOf = (differs: Partial<RepairCase>, id: string) => worked(differs).rules.find(({ rule }) => rule.id === id);

describe('the energy', () => {
  test('is that of a published worked example', () => {
    // A supplier's guide, read in one text: 25 hp at full load, 91 % against 88.5 %, 4,000 h at $0.06: $138.95 a year.
    const { moreCostPerYear } = worked({
      ...{ ratedKw: 25 * HP, loadPct: 100, efficiencyPct: 88.5, changePts: 0, newEfficiencyPct: 91 },
      ...{ hoursPerYear: 4_000, pricePerKwh: 0.06 },
    });
    expect(moreCostPerYear).toBeCloseTo(138.95, 2);
  });

  test('and its payback too: $370 more, saved at $300 a year', () => {
    // The same guide: about $300 a year and $370 more to pay. 370/300 = 1.23 years.
    const kw = 300 / (0.06 * 4_000);
    const pct = 80; // any: the power is chosen so that the saving is the guide's
    const { paybackYears, moreCostPerYear } = worked({
      ...{ repairCost: 1_000, newPrice: 1_370, changePts: 0, hoursPerYear: 4_000, pricePerKwh: 0.06, loadPct: 100 },
      ...{ efficiencyPct: pct, newEfficiencyPct: 90, ratedKw: kw / (100 / pct - 100 / 90) },
    });
    expect(moreCostPerYear).toBeCloseTo(300, 6);
    expect(paybackYears).toBeCloseTo(370 / 300, 6);
  });

  test('follows P h (100/E1 − 100/E2), worked by hand', () => {
    // 15 kW × 0.75 × 6,000 h × (1/0.895 − 1/0.93) = 2,838.3 kWh; × 0.12 = 340.60; 10 years less 900 more to pay: 2,505.99
    const { moreKwhPerYear, moreCostPerYear, savedByNew, paybackYears } = worked();
    expect(moreKwhPerYear).toBeCloseTo(2_838.3, 1);
    expect(moreCostPerYear).toBeCloseTo(340.6, 1);
    expect(savedByNew).toBeCloseTo(2_506, 0);
    expect(paybackYears).toBeCloseTo(2.642, 3);
  });

  test('of two motors alike is none, and a better old motor takes less', () => {
    expect(worked({ changePts: 0, newEfficiencyPct: 90 }).moreKwhPerYear).toBeCloseTo(0, 9);
    const better = worked({ efficiencyPct: 95, changePts: 0 });
    expect(better.moreKwhPerYear).toBeLessThan(0);
    expect(better).toMatchObject({ isNeverPaidBack: true, paybackYears: null });
  });

  test('a new motor that costs no more is paid back at once', () => {
    expect(worked({ repairCost: 1_500 }).paybackYears).toBe(0);
    expect(worked({ repairCost: 2_000 }).extraCost).toBe(-500);
  });
});

describe('what is not known is not assumed', () => {
  test.each<[keyof RepairCase, (keyof ReturnType<typeof repairOrReplace>)[]]>([
    ['repairCost', ['costSharePct', 'extraCost', 'savedByNew', 'paybackYears']],
    ['newPrice', ['costSharePct', 'extraCost', 'savedByNew', 'paybackYears']],
    ['ratedKw', ['moreKwhPerYear', 'moreCostPerYear', 'savedByNew', 'paybackYears']],
    ['loadPct', ['moreKwhPerYear', 'moreCostPerYear', 'savedByNew', 'paybackYears']],
    ['efficiencyPct', ['repairedEfficiencyPct', 'moreKwhPerYear', 'moreCostPerYear']],
    ['changePts', ['repairedEfficiencyPct', 'moreKwhPerYear', 'moreCostPerYear']],
    ['newEfficiencyPct', ['moreKwhPerYear', 'moreCostPerYear', 'savedByNew']],
    ['hoursPerYear', ['moreKwhPerYear', 'moreCostPerYear', 'savedByNew']],
    ['pricePerKwh', ['moreCostPerYear', 'savedByNew', 'paybackYears']],
    ['years', ['savedByNew']],
  ])('%s', (field, none) => {
    const without = worked({ [field]: null });
    for (const one of none) expect(without[one], one).toBeNull();
    expect(without.isNeverPaidBack).toBe(false);
  });
});

describe('a customary rule', () => {
  test.each<[string, Partial<RepairCase>, string]>([
    ['cost-half', { repairCost: 751 }, 'replace'],
    ['cost-half', { repairCost: 750 }, 'repair'],
    ['cost-half', { repairCost: null }, 'not-known'],
    ['cost-60', { repairCost: 901 }, 'replace'],
    ['cost-60', { repairCost: 900 }, 'repair'],
    ['cost-60', { repairCost: 901, isRewind: false }, 'not-asked'],
    ['small', { ratedKw: 18.5 }, 'replace'],
    ['small', { ratedKw: 22 }, 'repair'],
    ['small', { isRewind: false }, 'repair'],
    ['small', { isRewind: null }, 'not-known'],
    ['payback', {}, 'repair'],
    ['payback', { pricePerKwh: 0.2 }, 'replace'],
    ['payback', { newEfficiencyPct: 80 }, 'repair'],
    ['payback', { hoursPerYear: null }, 'not-known'],
  ])('%s with %j says %s', (id, differs, answer) => {
    expect(answerOf(differs, id)?.answer).toBe(answer);
  });

  test('never stands alone: they contradict each other, and no sum is made of them', () => {
    const answers = worked({ repairCost: 800 }).rules.map(({ answer }) => answer);
    expect(answers).toContain('replace');
    expect(answers).toContain('repair');
  });

  test('says where it comes from', () => {
    for (const { source, says } of CUSTOMARY_RULES) expect(`${source}${says}`).toMatch(/\S.{10}/);
    // Electrical trade press, 11 July 2020: “from an increase of 0.3% to a reduction of 0.5%, ... average decrease of 0.1%”.
    expect(MEASURED_CHANGE).toMatchObject({ fromPts: -0.5, toPts: 0.3, meanPts: -0.1 });
  });
});
