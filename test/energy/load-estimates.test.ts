import { describe, expect, test } from 'vitest';
import type { EstimateMethod } from '@/lib/energy/estimates/estimate';
import { loadEstimates } from '@/lib/energy/load-estimates';
import { type Measured, NOT_MEASURED } from '@/lib/energy/measured';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import { motor, set } from '../matching/easy';

const plate = (differs: Partial<NonNullable<MotorInput['ratings']>[number]>) =>
  motor({ ratings: [{ volts: 460, hertz: 60, hp: 40, rpm: 1775, amps: 48, ...differs }] });

function estimatesOf(rated: ReturnType<typeof motor>, read: Partial<Measured>, supply: PumpSetInput['supply'] = {}) {
  const asked = set({ failed: null, supply: { volts: 460, ...supply } });
  return loadEstimates(asked, rated, { ...NOT_MEASURED, ...read }, defaultSettings);
}

const by = (method: EstimateMethod, answer: ReturnType<typeof estimatesOf>) => {
  const found = answer.estimates.find((one) => one.method === method);
  if (found === undefined) throw new Error(answer.notMade.find((one) => one.method === method)?.why);
  return found;
};

describe('the published readings of three lines', () => {
  // US DOE load fact sheet, by the documentation of an open compressor library (CCP): 469.7 V, 37 A and 0.763 are
  // 22.967 kW in, 21.359 kW out of a 40 hp motor of 93 %: 71.6 % of 29.83 kW.
  const answer = estimatesOf(plate({ efficiencyPct: 93 }), {
    volts: [469.7, 469.7, 469.7],
    amps: [37, 37, 37],
    powerFactor: 0.763,
  });

  test('their product is 22.967 kW, from the means or from the three lines they are of', () => {
    expect(answer.inputKw.value).toBeCloseTo(22.967, 3);
    const ofLines = estimatesOf(plate({}), {
      ...{ volts: [467, 473, 469], amps: [36, 38, 37], powerFactor: (0.75 + 0.78 + 0.76) / 3 },
    });
    expect(ofLines.inputKw.value).toBeCloseTo(22.967, 1);
  });

  test('the output is 21.36 kW, 71.6 % of 40 hp', () => {
    const { loadPct, arithmetic } = by('output', answer);
    expect(loadPct).toBeCloseTo(71.6, 0);
    expect(arithmetic).toContain('= 21.36 kW');
  });

  test('input over input gives the same where efficiency has not fallen', () => {
    const { loadPct, arithmetic } = by('input-power', answer);
    expect(loadPct).toBeCloseTo(71.6, 0);
    expect(arithmetic).toContain('22.97 kW / (29.83 kW / 0.93)');
  });
});

describe('by slip', () => {
  // DOE fact sheet, slip example, from memory (LE3, LE4, LE6): 25 hp, 1750 of 1800 rpm, read 1770.
  const rated = plate({ hp: 25, rpm: 1750 });
  const read = (volts: number | null) => estimatesOf(rated, { rpm: 1770, volts: [volts, volts, volts] });

  test('30 of 50 rpm are 60 %', () => {
    expect(by('slip', read(null)).loadPct).toBeCloseTo(60, 9);
  });

  test('a fifth of slip either way, NEMA MG 1 12.46: 50 to 75 %', () => {
    expect(by('slip', read(null))).toMatchObject({ lowPct: expect.closeTo(50, 9), highPct: expect.closeTo(75, 9) });
  });

  test('at 440 V of 460 V the same slip is 54.9 %', () => {
    expect(by('slip-at-voltage', read(440)).loadPct).toBeCloseTo(54.9, 1);
  });

  test('one rpm of a 14 rpm slip is 7 % of load (trade article on load by slip), and it says so', () => {
    const { caveats } = by('slip', estimatesOf(plate({ rpm: 1786 }), { rpm: 1790 }));
    expect(caveats.join(' ')).toContain('One rpm is 7.1 % of load here');
  });

  test('the hertz that were read move the synchronous speed: 59.9 Hz takes 3 rpm off the slip', () => {
    expect(by('slip', estimatesOf(rated, { rpm: 1770, hertz: 59.9 })).loadPct).toBeCloseTo((100 * 27) / 50, 6);
  });

  test('on a drive the slip is torque, and the power less by the speed', () => {
    const driven = estimatesOf(rated, { rpm: 885, hertz: 30 }, { start: 'drive' });
    expect(by('slip', driven).loadPct).toBeCloseTo((100 * (15 / 50) * 885) / 1750, 6);
    expect(driven.notMade.find(({ method }) => method === 'slip-at-voltage')?.why).toContain('drive');
  });
});

describe('by slip above base frequency', () => {
  // Field weakening: volts stay, so torque for a slip falls with (base/frequency)² (the equivalent circuit, from memory).
  // 25 hp of 50 rpm rated slip at 90 Hz of 60: full power is 2/3 of the torque at 1.5 times the speed, so near 75 rpm.
  const driven = estimatesOf(
    plate({ hp: 25, rpm: 1750 }),
    { rpm: 2625, hertz: 90 },
    { start: 'drive', drive: { baseHertz: 60, maxHertz: 90 } },
  );

  test('75 of 50 rpm at 90 Hz are 2/3 of the torque and all of the power', () => {
    expect(by('slip', driven).loadPct).toBeCloseTo(100 * (75 / 50) * (60 / 90) ** 2 * (2625 / 1750), 9);
    expect(by('slip', driven).loadPct).toBeCloseTo(100, 9);
  });

  test('and the sum says by what', () => {
    expect(by('slip', driven).arithmetic).toContain('× 0.667² × 1.5');
  });
});

describe('a two-speed motor', () => {
  // 4 and 8 poles by n = 120 f / p (read in two texts): 1800 and 900 rpm; slips of 50 and 25 rpm.
  const twoSpeed = (poles: 4 | 8) =>
    motor({
      ...{ kind: 'two-speed', poles },
      ratings: [
        { volts: 460, hertz: 60, hp: 25, rpm: 1750, amps: 30 },
        { volts: 460, hertz: 60, hp: 6, rpm: 875, amps: 12 },
      ],
    });

  test.each([4, 8] as const)('is held against the speed it was read at, whatever poles are told: %i', (poles) => {
    expect(by('slip', estimatesOf(twoSpeed(poles), { rpm: 1770, hertz: 60 })).loadPct).toBeCloseTo(60, 9);
    const low = estimatesOf(twoSpeed(poles), { rpm: 885, hertz: 60, amps: [9, 9, 9], volts: [460, 460, 460] });
    expect(by('slip', low).loadPct).toBeCloseTo((100 * 15) / 25, 9);
    expect(by('line-current', low).loadPct).toBeCloseTo((100 * 9) / 12, 9);
  });

  test('without a speed is held against the higher one, and it says so', () => {
    const { caveats } = by('line-current', estimatesOf(twoSpeed(4), { amps: [9, 9, 9] }));
    expect(caveats.join(' ')).toContain('its speed was not read');
  });
});

describe('by line current', () => {
  // NEMA MG 1 12.47 (read in one text): at rated load the amps lie within 10 % of the plate's. A motor that takes 0.9 of
  // them there is fully loaded at 90 %, one that takes 1.1 at 110 %: the band must hold 100 % for both.
  test.each([0.9, 1.1])('a motor that takes %f of the plate’s amps at rated load is within the band there', (share) => {
    const amps = 48 * share;
    const read = { amps: [amps, amps, amps], volts: [460, 460, 460] } as const;
    const { lowPct, highPct } = by('line-current', estimatesOf(plate({ pf: 0.85 }), read));
    expect(lowPct).toBeLessThanOrEqual(100 + 1e-9);
    expect(highPct).toBeGreaterThanOrEqual(100 - 1e-9);
  });

  test('of a single-phase motor the first line alone counts: its other readings are to neutral', () => {
    const single = motor({
      ...{ kind: 'single-phase', phases: 1 },
      ratings: [{ volts: 230, hertz: 60, hp: 3, rpm: 1740, amps: 13.2, pf: 0.9, efficiencyPct: 82 }],
    });
    const [alone, more] = [
      { volts: [230, null, null], amps: [10, null, null], powerFactor: 0.85 } as const,
      { volts: [230, 115, 115], amps: [10, 10, 0], powerFactor: 0.85 } as const,
    ].map((read) => estimatesOf(single, read, { phases: 1, volts: 230 }));
    if (alone === undefined || more === undefined) throw new Error('Two are made here.');
    expect(alone.inputKw.value).toBeCloseTo((230 * 10 * 0.85) / 1_000, 9); // P = V I pf
    expect(more.estimates).toEqual(alone.estimates);
  });

  test('one line that was read stands for all three, and every way by it says so', () => {
    const answer = estimatesOf(plate({ efficiencyPct: 93 }), {
      ...{ volts: [460, 460, 460], amps: [30, null, null], powerFactor: 0.85 },
    });
    for (const method of ['input-power', 'output', 'line-current'] as const)
      expect(by(method, answer).caveats.join(' ')).toContain('Not every line was read');
  });

  // LE5, from memory: 40 A of 48 A at 470 V on a 460 V plate.
  test('40 of 48 A at 470 of 460 V are 85.1 %', () => {
    const { loadPct, arithmetic } = by(
      'line-current',
      estimatesOf(plate({}), { amps: [40, 40, 40], volts: [470, 470, 470] }),
    );
    expect(loadPct).toBeCloseTo(85.1, 1);
    expect(arithmetic).toBe('40 A / 48 A × 470 V / 460 V = 85.1 %');
  });

  // Public data sheets (makers withheld): at half load 0.79 and 90.4 % of a 22 kW, 0.72 and 89 % of a 3 hp motor.
  test.each([
    ['22 kW, 0.90 and 91 % at full, half load', 22, 0.9, 0.91, 0.79, 0.904, 50],
    ['22 kW, three quarters', 22, 0.9, 0.91, 0.87, 0.913, 75],
    ['3 hp, 0.87 and 89.5 % at full, half load', 2.238, 0.87, 0.895, 0.72, 0.89, 50],
    ['3 hp, three quarters', 2.238, 0.87, 0.895, 0.82, 0.905, 75],
  ])('the band holds the load of a public data sheet: %s', (_, kw, pf, eta, pfThere, etaThere, loadPct) => {
    const ampsAt = (share: number, factor: number, efficiency: number) =>
      (share * kw * 1_000) / (Math.sqrt(3) * 400 * factor * efficiency);
    const rated = motor({ ratings: [{ volts: 400, hertz: 50, kw, rpm: 1465, amps: ampsAt(1, pf, eta), pf }] });
    const amps = ampsAt(loadPct / 100, pfThere, etaThere);
    const found = by(
      'line-current',
      estimatesOf(rated, { amps: [amps, amps, amps], volts: [400, 400, 400] }, { volts: 400, hertz: 50 }),
    );
    expect(found.loadPct).toBeGreaterThan(loadPct); // it reads high
    expect(found.lowPct).toBeLessThanOrEqual(loadPct);
    expect(found.highPct).toBeGreaterThanOrEqual(loadPct);
  });

  // DOE load fact sheet by two texts: a poor indicator below about half load.
  test('below half load the band grows, and it says so', () => {
    const share = (amps: number) => {
      const { lowPct, highPct, loadPct } = by(
        'line-current',
        estimatesOf(plate({ pf: 0.85 }), { amps: [amps, amps, amps], volts: [460, 460, 460] }),
      );
      return (highPct - lowPct) / loadPct;
    };
    expect(share(20)).toBeGreaterThan(share(30));
    expect(share(30)).toBeGreaterThan(share(45));
    expect(by('line-current', estimatesOf(plate({}), { amps: [20, 20, 20] })).caveats.join(' ')).toContain(
      'Below half load',
    );
  });

  test('with no power factor on the plate low amps may be next to no load', () => {
    expect(by('line-current', estimatesOf(plate({}), { amps: [24, 24, 24] })).lowPct).toBe(0);
  });
});

describe('the readings contradict each other', () => {
  test('where no band by one reading meets one by another', () => {
    // 30 of 50 rpm by slip is 50 to 75 %; 6 kW into 40 hp is 19 %.
    const answer = estimatesOf(plate({ rpm: 1750, efficiencyPct: 93 }), { rpm: 1770, inputKw: 6 });
    expect(answer.contradictions.map(({ between }) => between)).toEqual([['input power', 'slip']]);
    expect(answer.contradictions[0]?.says).toMatch(/by slip 50 to 75 %/);
  });

  test('not where one of the two slips meets it', () => {
    const answer = estimatesOf(plate({ rpm: 1750, efficiencyPct: 93 }), { rpm: 1770, inputKw: 21 });
    expect(answer.contradictions).toEqual([]);
  });

  test('where the power read is not volts × amps × power factor', () => {
    const answer = estimatesOf(plate({ efficiencyPct: 93 }), {
      ...{ inputKw: 15, volts: [470, 470, 470], amps: [37, 37, 37], powerFactor: 0.763 },
    });
    expect(answer.contradictions.map(({ between }) => between)).toContainEqual([
      'input power',
      'volts, amps and power factor',
    ]);
  });
});

describe('unknown in, unknown out', () => {
  test('nothing read: no estimate, and each way says what to read', () => {
    const answer = estimatesOf(plate({ efficiencyPct: 93 }), {});
    expect(answer.estimates).toEqual([]);
    expect(answer.notMade.map(({ method }) => method)).toEqual([
      ...['input-power', 'output', 'line-current', 'slip', 'slip-at-voltage'],
    ]);
    expect(answer.notMade.map(({ why }) => why).join(' ')).toMatch(/volts, amps, power factor.*No amps.*No speed/);
  });

  test.each<[string, ReturnType<typeof motor>, Partial<Measured>, PumpSetInput['supply'], EstimateMethod, RegExp]>([
    ['no efficiency on the plate', plate({}), { inputKw: 20 }, {}, 'output', /prints no efficiency/],
    [
      'no power on the plate',
      plate({ hp: null, efficiencyPct: 93 }),
      { inputKw: 20 },
      {},
      'input-power',
      /power at this supply/,
    ],
    ['no amps on the plate', plate({ amps: null }), { amps: [9, 9, 9] }, {}, 'line-current', /plate’s amps/],
    ['no volts anywhere', plate({}), { amps: [9, 9, 9] }, { volts: null }, 'line-current', /volts/],
    ['a drive’s output', plate({}), { amps: [9, 9, 9] }, { start: 'drive' }, 'line-current', /drive/],
    ['no slip on the plate', plate({ rpm: 1800 }), { rpm: 1790 }, {}, 'slip', /slip/],
    ['a speed at the synchronous one', plate({}), { rpm: 1800 }, {}, 'slip', /not below the synchronous 1800/],
    ['a motor that runs in step', motor({ kind: 'reluctance' }), { rpm: 1750 }, {}, 'slip', /in step/],
    ['a drive whose hertz were not read', plate({}), { rpm: 1000 }, { start: 'drive' }, 'slip', /frequency/],
    ['a supply of unknown hertz', plate({}), { rpm: 1780 }, { hertz: null }, 'slip', /plate does not tell/],
    ['no volts read', plate({}), { rpm: 1780 }, {}, 'slip-at-voltage', /volts/],
    ['a load below a tenth', plate({ efficiencyPct: 93 }), { inputKw: 2 }, {}, 'output', /below a tenth/],
    ['no amps at all', plate({}), { amps: [0, 0, 0] }, {}, 'line-current', /does not run/],
    ['a line that carries nothing', plate({}), { amps: [40, 40, 0] }, {}, 'line-current', /L3 carries nothing/],
    [
      'the power of two lines alone',
      plate({ efficiencyPct: 93 }),
      { amps: [0, 40, 40], volts: [460, 460, 460], powerFactor: 0.8 },
      {},
      'input-power',
      /L1 carries nothing/,
    ],
    ['a motor that all but stands', plate({}), { rpm: 10 }, {}, 'slip', /past what it can carry/],
    ['hertz that are not the supply’s', plate({}), { rpm: 1480, hertz: 50 }, {}, 'slip', /told as 60 Hz/],
    ['no power at all', plate({ efficiencyPct: 93 }), { inputKw: 0 }, {}, 'input-power', /does not run/],
  ])('%s', (_, rated, read, supply, method, why) => {
    const answer = estimatesOf(rated, read, supply);
    expect(answer.notMade.find((one) => one.method === method)?.why).toMatch(why);
  });

  test('the site may say which class a plate without efficiency counts as, and the sum says so', () => {
    const asked = set({ failed: null });
    const read = { ...NOT_MEASURED, inputKw: 2 };
    const site = { ...defaultSettings, unprintedClass: 'IE3' as const };
    const rated = motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] });
    // NEMA MG 1 Table 12-12: 5 hp, 4 poles, enclosed: 89.5 %.
    expect(by('input-power', loadEstimates(asked, rated, read, site)).arithmetic).toContain('/ 0.895)');
  });
});
