import { describe, expect, test } from 'vitest';
import { defaultSettings } from '@/lib/matching/default-settings';
import { partLoadCost } from '@/lib/review/part-load-cost';
import { caseOf, type ReviewCase } from '@/lib/review/review-case';
import { reviewOf } from '@/lib/review/review-of';
import { inPlace, row } from './in-place';

const by = (asked: ReviewCase, settings: Partial<typeof defaultSettings>): ReviewCase =>
  caseOf(asked.set, asked.motor, { settings: { ...defaultSettings, ...settings }, asOf: null });
const TOLD = { pricePerKwh: 0.2, hoursPerYear: 5_000, unprintedClass: null };

describe('what part load costs in a year', () => {
  test('is the input at this load less the input at full-load efficiency', () => {
    // 20 hp, 14.91 kW, loaded to 20 %. Worked by hand from the printed curve: DOE fact sheet, Figure 1 (read in one text).
    const found = partLoadCost(by(inPlace({ load: { shaftKw: 2.98 } }, row({ hp: 20, efficiencyPct: 93 })), TOLD));
    if (found.kind !== 'known') throw new Error(JSON.stringify(found));
    const [, kw, now, best] = /^([\d.]+) kW × \(1 \/ ([\d.]+) − 1 \/ ([\d.]+)\)/.exec(found.from)?.map(Number) ?? [];
    expect(best).toBe(0.93);
    expect(now).toBeLessThan(0.93);
    expect(found.kwh).toBeCloseTo((kw as number) * (1 / (now as number) - 1 / 0.93) * 5_000, -1);
    expect(found.money).toBeCloseTo(found.kwh * 0.2, 6);
  });

  test.each([1.5, 2.98, 4.4, 5.8])(
    'whoever works the printed figures out at %f kW comes to the same within a two-hundredth',
    (shaftKw) => {
      const found = partLoadCost(by(inPlace({ load: { shaftKw } }, row({ hp: 20, efficiencyPct: 93 })), TOLD));
      if (found.kind !== 'known') throw new Error(JSON.stringify(found));
      const printed = /^([\d.]+) kW × \(1 \/ ([\d.]+) − 1 \/ ([\d.]+)\) × ([\d.]+) h × ([\d.]+) a kWh$/.exec(
        found.from,
      );
      const [kw = 0, now = 0, best = 0, hours = 0, price = 0] = (printed ?? []).slice(1).map(Number);
      const kwh = kw * (1 / now - 1 / best) * hours;
      expect(Math.abs(kwh / found.kwh - 1)).toBeLessThan(0.005);
      expect(Math.abs((kwh * price) / found.money - 1)).toBeLessThan(0.005);
    },
  );

  test.each([
    ['hours that nobody told', { ...TOLD, hoursPerYear: null }, row({ hp: 20, efficiencyPct: 93 }), null],
    ['an efficiency that nobody told', TOLD, row({ hp: 20, efficiencyPct: null }), null],
  ] as const)('is not known without %s', (_, settings, plate, kwh) => {
    expect(partLoadCost(by(inPlace({ load: { shaftKw: 2.98 } }, plate), settings))).toMatchObject({
      ...{ kind: 'unpriced', kwh },
      why: expect.stringMatching(/\S/),
    });
  });

  test('without a price its energy is told all the same', () => {
    const plate = row({ hp: 20, efficiencyPct: 93 });
    const found = partLoadCost(by(inPlace({ load: { shaftKw: 2.98 } }, plate), { ...TOLD, pricePerKwh: null }));
    expect(found).toMatchObject({ kind: 'unpriced', kwh: expect.any(Number), why: expect.stringContaining('price') });
  });
});

test('a price changes no finding’s figures: what was accepted stays so', () => {
  const asked = inPlace({ load: { shaftKw: 2.98 } }, row({ hp: 20, efficiencyPct: 93 }));
  const figures = (settings: Partial<typeof defaultSettings>) =>
    reviewOf(by(asked, settings)).map((one) => one.figures);
  expect(figures(TOLD)).toEqual(figures({ ...TOLD, pricePerKwh: 0.4, hoursPerYear: 8_000 }));
  expect(figures(TOLD)).not.toEqual([]);
});
