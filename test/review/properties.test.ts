import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge } from '@/lib/matching/assess';
import { buyable } from '@/lib/matching/buy/buyable';
import { defaultSettings } from '@/lib/matching/default-settings';
import { kindsOf } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { curesOf } from '@/lib/review/cure/cures-of';
import { WAYS } from '@/lib/review/cure/ways';
import { REVIEW_RULES } from '@/lib/review/finding';
import { NOTHING_KNOWN } from '@/lib/review/known';
import { caseOf, reviewCase } from '@/lib/review/review-case';
import { reviewOf } from '@/lib/review/review-of';
import { reviewRules } from '@/lib/review/rules';
import { someList } from '../matching/plant-cases';

const RUNS = { seed: 20261128, numRuns: 300 } as const;
const by = { settings: defaultSettings, asOf: '2026-11-28' };

type Change = (set: PumpSet) => PumpSet;
const load =
  (differs: (load: PumpSet['load']) => Partial<PumpSet['load']>): Change =>
  (set) => ({
    ...set,
    load: { ...set.load, ...differs(set.load) },
  });
const times = (value: number | null, by: number) => (value === null ? null : value * by);

/** What makes of a set in order one that does not suit its motor. */
const misfits: readonly Change[] = [
  load(({ shaftKw }) => ({ shaftKw: times(shaftKw, 0.25) })),
  load(({ shaftKw }) => ({ shaftKw: times(shaftKw, 1.35) })),
  load(({ shaftKw }) => ({ shaftKw: times(shaftKw, 1.6) })),
  load(({ atPumpRpm }) => ({ maxPumpRpm: times(atPumpRpm, 1.01) })),
  load(({ atPumpRpm }) => ({ atPumpRpm: times(atPumpRpm, 0.9) })),
  load(() => ({ breakawayPct: 230 })),
  (set) => ({ ...set, supply: { ...set.supply, start: 'star-delta', directAllowed: null } }),
  (set) => ({ ...set, supply: { ...set.supply, overloadMinA: 0.5, overloadMaxA: 1, contactorA: 1, cableA: 1 } }),
  (set) => ({
    ...set,
    supply: {
      ...set.supply,
      start: 'drive',
      drive: {
        ...{ ratedA: 200, overloadPct: 150, outputVolts: set.supply.volts, baseHertz: set.supply.hertz },
        ...{ minHertz: 8, maxHertz: 90, cableM: 70, filter: false },
      },
    },
  }),
  (set) => ({ ...set, surroundings: { ...set.surroundings, ip: 'IP66', washdown: true } }),
  (set) => ({ ...set, surroundings: { ...set.surroundings, ambientC: 55, altitudeM: 2500 } }),
  (set) => ({ ...set, coupling: { ...set.coupling, maxTorqueNm: 5 } }),
  (set) => ({ ...set, mounting: 'face', seat: { ...set.seat, face: 'FF165' } }),
  (set) => ({ ...set, shaftDirection: 'up' }),
];

/** A set of a plant that was put wrong, with motors that might stand in for its own. */
const someMisfit = fc
  .tuple(someList, fc.subarray([...misfits], { minLength: 1, maxLength: 3 }))
  .map(([{ set, candidates }, changes]) => ({ set: changes.reduce((so, change) => change(so), set), candidates }))
  .filter(({ set }) => set.failed !== null);

const casesOf = (set: PumpSet) => {
  const asked = reviewCase(set, by, NOTHING_KNOWN);
  if (asked === null) throw new Error('the set stands empty');
  return asked;
};

test('the misfits raise every rule that a set and a plate can raise', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(someMisfit, ({ set }) => {
      for (const { rule } of reviewOf(casesOf(set))) seen.add(rule);
    }),
    RUNS,
  );
  // A demo plant has few single-phase motors; the others ask for what was read, and for the shelves.
  const others = ['single-phase', 'currents', 'spare'];
  expect(REVIEW_RULES.filter((rule) => !seen.has(rule) && !others.includes(rule))).toEqual([]);
});

describe('a cure, judged again,', () => {
  const RULES = new Map(reviewRules);
  const motorOf = (id: string, all: readonly Motor[]) => {
    const found = all.find((one) => one.id === id);
    if (found === undefined) throw new Error(`no motor ${id}`);
    return found;
  };

  test('by another motor raises the finding no more, and the engine does not refuse it', () => {
    let cures = 0;
    fc.assert(
      fc.property(someMisfit, ({ set, candidates }) => {
        const asked = casesOf(set);
        const shelf = screenOf(kindsOf(candidates), defaultSettings);
        for (const finding of reviewOf(asked))
          for (const cure of curesOf(asked, finding, shelf).cures) {
            if (cure.kind !== 'shelf' && cure.kind !== 'buy') continue;
            cures += 1;
            const motor = motorOf(cure.motor, cure.kind === 'shelf' ? candidates : buyable(set));
            const after = caseOf(set, motor, by);
            expect(RULES.get(finding.rule)?.(after)).toBeNull();
            expect(judge(set, motor, by)).toMatchObject({ verdict: cure.verdict, hours: cure.hours });
            expect(cure.verdict).not.toBe('unsuitable');
          }
      }),
      RUNS,
    );
    expect(cures).toBeGreaterThan(50);
  });

  test('by work at the set raises the finding no more', () => {
    let cures = 0;
    fc.assert(
      fc.property(someMisfit, ({ set }) => {
        const asked = casesOf(set);
        for (const finding of reviewOf(asked)) {
          const rule = RULES.get(finding.rule);
          if (rule === undefined) throw new Error(finding.rule);
          for (const cure of curesOf(asked, finding, () => []).cures) {
            if (cure.kind !== 'work') continue;
            cures += 1;
            const changes = WAYS[finding.rule].byWork.flatMap((way) => way(asked, rule));
            const change = changes.find(({ what }) => what === cure.what);
            expect(change).toBeDefined();
            if (change) expect(rule(caseOf(change.set, asked.motor, by))).toBeNull();
          }
        }
      }),
      RUNS,
    );
    expect(cures).toBeGreaterThan(100);
  });
});

test('every finding tells its figures, its source and what to do, and speaks of no failed motor', () => {
  fc.assert(
    fc.property(someMisfit, ({ set, candidates }) => {
      const asked = casesOf(set);
      const shelf = screenOf(kindsOf(candidates), defaultSettings);
      for (const finding of reviewOf(asked)) {
        expect(finding.says).not.toMatch(/failed motor|undefined|NaN|null/);
        expect(finding.cite.length).toBeGreaterThan(3);
        expect(finding.figures).toContain('=');
        if (finding.urgency === 'look') expect(finding.reading).toMatch(/\(\d+ min\)$/);
        const { cures, why } = curesOf(asked, finding, shelf);
        expect(cures.length > 0).toBe(why === null);
      }
    }),
    { ...RUNS, numRuns: 150 },
  );
});

test('the same set raises the same, whatever was asked before', () => {
  fc.assert(
    fc.property(someMisfit, ({ set }) => {
      const copy = JSON.parse(JSON.stringify(set)) as PumpSet;
      expect(reviewOf(casesOf(copy))).toEqual(reviewOf(casesOf(set)));
    }),
    { ...RUNS, numRuns: 100 },
  );
});
