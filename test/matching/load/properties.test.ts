import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { power } from '@/lib/matching/criteria/load/power';
import type { CriterionId } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { hpOfKw } from '@/lib/units/power';
import { motor, set } from '../easy';
import { answerTo, badness, judged, someCase } from '../plant-cases';
import { asked, pointOf } from './asked';

const RUNS = { seed: 20261126, numRuns: 200 } as const;
const by = fc.double({ min: 1, max: 3, noNaN: true });

const stronger = (candidate: Motor, by: number): Motor => ({
  ...candidate,
  ratings: candidate.ratings.map((row) => ({ ...row, kw: row.kw === null ? null : row.kw * by })),
});

test('a larger motor, alike in all else, never gets a worse grade in power', () => {
  fc.assert(
    fc.property(someCase, by, ({ set, candidate }, by) => {
      const small = answerTo(judged(set, candidate).findings, 'power');
      const large = answerTo(judged(set, stronger(candidate, by)).findings, 'power');
      expect(badness(large)).toBeLessThanOrEqual(badness(small));
    }),
    RUNS,
  );
});

describe('a looser limit never worsens a grade', () => {
  const times = (value: number | null, by: number) => (value === null ? null : value * by);
  const loosened: readonly [string, CriterionId, (set: PumpSet, by: number) => PumpSet][] = [
    ['a faster pump', 'speed', (s, by) => ({ ...s, load: { ...s.load, maxPumpRpm: times(s.load.maxPumpRpm, by) } })],
    ['no maximum of the pump', 'speed', (s) => ({ ...s, load: { ...s.load, maxPumpRpm: null } })],
    [
      'a wider tolerance',
      'speed',
      (s, by) => ({ ...s, load: { ...s.load, flowTolerancePct: times(s.load.flowTolerancePct, by) } }),
    ],
    [
      'a stronger coupling',
      'torque',
      (s, by) => ({ ...s, coupling: { ...s.coupling, maxTorqueNm: times(s.coupling.maxTorqueNm, by) } }),
    ],
  ];
  test.each(loosened)('%s', (_, id, loosen) => {
    fc.assert(
      fc.property(someCase, by, ({ set: made, candidate }, by) => {
        const tight = { ...made, load: { ...made.load, maxPumpRpm: made.load.atPumpRpm, flowTolerancePct: 1 } };
        for (const set of [made, tight]) {
          const before = badness(answerTo(judged(set, candidate).findings, id));
          expect(badness(answerTo(judged(loosen(set, by), candidate).findings, id))).toBeLessThanOrEqual(before);
        }
      }),
      RUNS,
    );
  });

  test('a motor that may turn faster', () => {
    fc.assert(
      fc.property(someCase, fc.integer({ min: 900, max: 4000 }), by, ({ set, candidate }, maxRpm, by) => {
        const at = (rpm: number) => badness(answerTo(judged(set, { ...candidate, maxRpm: rpm }).findings, 'speed'));
        expect(at(maxRpm * by)).toBeLessThanOrEqual(at(maxRpm));
      }),
      RUNS,
    );
  });
});

test('hp and kW of the same power give the same point and the same grade', () => {
  const plate = (power: { hp: number } | { kw: number }) =>
    motor({ ratings: [{ volts: 460, hertz: 60, rpm: 1750, amps: 6.6, pf: 0.82, ...power }] });
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 20, noNaN: true }),
      fc.double({ min: 0.5, max: 20, noNaN: true }),
      (kw, load) => {
        const us = plate({ hp: hpOfKw(kw) });
        const si = plate({ kw });
        const at = set({ load: { shaftKw: load } });
        const [a, b] = [pointOf(at, us), pointOf(at, si)];
        expect(a.why).toBe(b.why);
        if (a.motorRpm !== null) expect(a.motorRpm).toBeCloseTo(b.motorRpm ?? 0, 6);
        expect(asked(power, at, us)?.grade).toBe(asked(power, at, si)?.grade);
      },
    ),
    RUNS,
  );
});
