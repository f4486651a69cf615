import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CriterionId } from '@/lib/matching/finding';
import { VERDICTS } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { answerTo, assessed, badness, judged, someCase, someList } from './plant-cases';

/** The same runs every time; a failure is shrunk to the smallest case. */
const RUNS = { seed: 20261126, numRuns: 300 } as const;
const CHECK = 3; // the place of `check` among the grades

const rows = (motor: Motor, differs: Partial<Motor['ratings'][number]>): Motor => ({
  ...motor,
  ratings: motor.ratings.map((row) => ({ ...row, ...differs })),
});
const noMeasures = (motor: Motor): Motor['measured'] => ({
  ...motor.measured,
  shaftDiameterMm: null,
  shaftLengthMm: null,
});

describe('a value that the physics always has, told by nothing, never passes', () => {
  const deleted: readonly [string, readonly CriterionId[], (motor: Motor) => Motor][] = [
    // The kind "single-phase" would tell it.
    [
      'phases',
      ['phases'],
      (motor) => ({ ...motor, phases: null, kind: motor.kind === 'single-phase' ? null : motor.kind }),
    ],
    // Without a row at the supply's hertz the frequency judges the volts as well.
    ['voltage', ['voltage', 'frequency'], (motor) => rows(motor, { volts: null, voltsMin: null, voltsMax: null })],
    ['frequency', ['frequency'], (motor) => rows(motor, { hertz: null })],
    ['every rating', ['frequency'], (motor) => ({ ...motor, ratings: [] })],
    // The plate speed would tell them.
    ['poles', ['speed'], (motor) => rows({ ...motor, poles: null }, { rpm: null })],
    ['mounting', ['mounting'], (motor) => ({ ...motor, frame: null, mounting: null })],
    ['shaft', ['shaft-diameter'], (motor) => ({ ...motor, frame: null, measured: noMeasures(motor) })],
  ];
  test.each(deleted)('%s', (_, criteria, forget) => {
    fc.assert(
      fc.property(someCase, ({ set, candidate }) => {
        const { findings, verdict } = judged(set, forget(candidate));
        const worst = Math.max(...criteria.map((id) => badness(answerTo(findings, id))));
        expect(worst).toBeGreaterThanOrEqual(CHECK);
        expect(VERDICTS.indexOf(verdict)).toBeGreaterThanOrEqual(VERDICTS.indexOf('check-first'));
      }),
      RUNS,
    );
  });
});

test('a plate speed that nothing tells never passes for a speed', () => {
  fc.assert(
    fc.property(someCase, ({ set, candidate }) => {
      const found = answerTo(judged(set, rows(candidate, { rpm: null })).findings, 'speed');
      expect(['work', 'check', 'block']).toContain(found?.grade);
    }),
    RUNS,
  );
});

describe('a value the set states a need for, told by nothing, never passes', () => {
  const stated: readonly [string, CriterionId, (set: PumpSet) => boolean, (motor: Motor) => Motor][] = [
    ['IP', 'enclosure', ({ surroundings }) => surroundings.ip !== null, (m) => ({ ...m, ip: null, enclosure: null })],
    ['washdown', 'washdown', ({ surroundings }) => surroundings.washdown === true, (m) => ({ ...m, washdown: null })],
    ['auxiliaries', 'auxiliaries', ({ needs }) => needs.length > 0, (m) => ({ ...m, has: null })],
    ['rotation', 'rotation', ({ rotation }) => rotation === 'cw', (m) => ({ ...m, rotation: null })],
    ['amps', 'full-load-current', ({ supply }) => supply.overloadMaxA !== null, (m) => rows(m, { amps: null })],
    [
      'area mark',
      'area-classification',
      ({ surroundings }) => (surroundings.classification ?? null) !== null,
      (m) => ({ ...m, classification: null }),
    ],
  ];
  test.each(stated)('%s', (_, id, isStated, forget) => {
    fc.assert(
      fc.property(
        someCase.filter(({ set }) => isStated(set)),
        ({ set, candidate }) => {
          const { findings } = judged(set, forget(candidate));
          expect(badness(answerTo(findings, id))).toBeGreaterThanOrEqual(CHECK);
        },
      ),
      RUNS,
    );
  });
});

test('order ignores the order the candidates came in', () => {
  const shuffled = someList.chain(({ set, candidates }) =>
    fc.shuffledSubarray(candidates, { minLength: candidates.length }).map((again) => ({ set, candidates, again })),
  );
  fc.assert(
    fc.property(shuffled, ({ set, candidates, again }) => {
      expect(JSON.stringify(assessed(set, again))).toBe(JSON.stringify(assessed(set, candidates)));
    }),
    { ...RUNS, numRuns: 200 },
  );
});

test('a candidate is judged the same alone and in company', () => {
  fc.assert(
    fc.property(someList, ({ set, candidates }) => {
      for (const { rank: _, why: __, ...one } of assessed(set, candidates).results) {
        const candidate = candidates.find(({ id }) => id === one.id);
        expect(candidate).toBeDefined();
        if (candidate) expect(judged(set, candidate)).toMatchObject(one);
      }
    }),
    { ...RUNS, numRuns: 60 },
  );
});

describe('a looser limit never worsens a grade', () => {
  const supply = (set: PumpSet, differs: Partial<PumpSet['supply']>): PumpSet => ({
    ...set,
    supply: { ...set.supply, ...differs },
  });
  const times = (value: number | null, by: number) => (value === null ? null : value * by);
  const drive = (
    { supply: { drive: now } }: PumpSet,
    differs: (drive: NonNullable<typeof now>) => Partial<NonNullable<typeof now>>,
  ) => (now === null ? null : { ...now, ...differs(now) });
  const lower = (digit: string | undefined) =>
    digit === undefined || !/[1-6]/.test(digit) ? digit : String(Number(digit) - 1);

  const looser: readonly [string, readonly CriterionId[], (set: PumpSet, by: number) => PumpSet][] = [
    [
      'a wider overload dial',
      ['full-load-current'],
      (set, by) =>
        supply(set, {
          overloadMinA: times(set.supply.overloadMinA, 1 / by),
          overloadMaxA: times(set.supply.overloadMaxA, by),
        }),
    ],
    ['a thicker cable', ['full-load-current'], (set, by) => supply(set, { cableA: times(set.supply.cableA, by) })],
    [
      'a larger contactor',
      ['full-load-current'],
      (set, by) => supply(set, { contactorA: times(set.supply.contactorA, by) }),
    ],
    [
      'a higher trip',
      ['starting'],
      (set, by) => supply(set, { instantaneousTripA: times(set.supply.instantaneousTripA, by) }),
    ],
    [
      'a larger drive',
      ['full-load-current', 'breakaway'],
      (set, by) => supply(set, { drive: drive(set, ({ ratedA }) => ({ ratedA: times(ratedA, by) })) }),
    ],
    [
      'a drive with more overload',
      ['breakaway'],
      (set) => supply(set, { drive: drive(set, () => ({ overloadPct: 200 })) }),
    ],
    [
      'a filter at the drive',
      ['drive-suitability'],
      (set) => supply(set, { drive: drive(set, () => ({ filter: true })) }),
    ],
    [
      'less unbalance',
      ['voltage', 'temperature-altitude', 'power'],
      (set, by) => supply(set, { unbalancePct: times(set.supply.unbalancePct, 1 / by) }),
    ],
    ['direct start allowed', ['starting'], (set) => supply(set, { directAllowed: true })],
    [
      'a lower IP need',
      ['enclosure'],
      ({ surroundings, ...set }) => ({
        ...set,
        surroundings: {
          ...surroundings,
          ip: surroundings.ip === null ? null : `IP${lower(surroundings.ip[2])}${lower(surroundings.ip[3])}`,
        },
      }),
    ],
    [
      'a cooler place',
      ['temperature-altitude', 'power'],
      ({ surroundings, ...set }, by) => ({
        ...set,
        surroundings: {
          ...surroundings,
          ambientC: surroundings.ambientC === null ? null : surroundings.ambientC - by * 10,
        },
      }),
    ],
    [
      'a lower place',
      ['temperature-altitude', 'power'],
      ({ surroundings, ...set }, by) => ({
        ...set,
        surroundings: { ...surroundings, altitudeM: times(surroundings.altitudeM, 1 / by) },
      }),
    ],
    [
      'a wider flow tolerance',
      ['speed'],
      ({ load, ...set }, by) => ({ ...set, load: { ...load, flowTolerancePct: times(load.flowTolerancePct, by) } }),
    ],
    [
      'less breakaway',
      ['breakaway'],
      ({ load, ...set }, by) => ({ ...set, load: { ...load, breakawayPct: times(load.breakawayPct, 1 / by) } }),
    ],
    [
      'a higher shim limit',
      ['shaft-height'],
      ({ base, ...set }, by) => ({ ...set, base: { ...base, shimLimitMm: times(base.shimLimitMm, by) } }),
    ],
    ['slotting allowed', ['foot-holes'], ({ base, ...set }) => ({ ...set, base: { ...base, slotting: true } })],
    [
      'more take-up',
      ['shaft-height', 'shaft-position'],
      ({ coupling, ...set }, by) => ({ ...set, coupling: { ...coupling, takeUpMm: times(coupling.takeUpMm, by) } }),
    ],
    [
      'a stronger coupling',
      ['torque'],
      ({ coupling, ...set }, by) => ({
        ...set,
        coupling: { ...coupling, maxTorqueNm: times(coupling.maxTorqueNm, by) },
      }),
    ],
    [
      'more room',
      ['envelope', 'lift'],
      ({ base, ...set }, by) => ({
        ...set,
        base: { ...base, maxLengthMm: times(base.maxLengthMm, by), maxMassKg: times(base.maxMassKg, by) },
      }),
    ],
  ];
  /** A limit this plant does not state everywhere, somewhere near what its motors need. */
  const stating = ({ set, candidate }: { set: PumpSet; candidate: Motor }): PumpSet => {
    const amps = candidate.ratings[0]?.amps ?? 10;
    return {
      ...set,
      supply: {
        ...set.supply,
        unbalancePct: set.supply.unbalancePct ?? 4.2,
        drive: set.supply.drive && { ...set.supply.drive, overloadPct: 105 },
        instantaneousTripA: amps * 6,
        contactorA: amps * 0.9,
        cableA: amps * 1.1,
      },
      base: {
        ...set.base,
        maxLengthMm: (candidate.lengthMm ?? 300) * 0.9,
        maxMassKg: (candidate.massKg ?? 50) * 0.9,
        shimLimitMm: 3,
      },
      coupling: { ...set.coupling, maxTorqueNm: 30, takeUpMm: 10 },
      load: { ...set.load, flowTolerancePct: 0.4, breakawayPct: 150 },
      surroundings: { ...set.surroundings, ambientC: set.surroundings.ambientC ?? 48, altitudeM: 1500 },
    };
  };
  test.each(looser)('%s', (_, criteria, loosen) => {
    let improved = 0;
    fc.assert(
      fc.property(someCase, fc.double({ min: 1.01, max: 2, noNaN: true }), (one, by) => {
        const tight = stating(one);
        const before = judged(tight, one.candidate).findings;
        const after = judged(loosen(tight, by), one.candidate).findings;
        for (const id of criteria) {
          const [was, is] = [badness(answerTo(before, id)), badness(answerTo(after, id))];
          expect({ id, is, isWorse: is > was }).toEqual({ id, is, isWorse: false });
          // The same grade may still cost less: shims in place of a ground block.
          const hours = (found: typeof before) => answerTo(found, id)?.work?.hours ?? 0;
          if (is < was || hours(after) < hours(before)) improved += 1;
        }
      }),
      RUNS,
    );
    // A property that never met a limit would hold of anything.
    expect(improved).toBeGreaterThan(0);
  });
});

test('hp and kW of one power are judged alike', () => {
  const inKw = (motor: Motor): Motor => ({ ...motor, ratings: motor.ratings.map((row) => ({ ...row, hp: null })) });
  fc.assert(
    fc.property(someCase, ({ set, candidate }) => {
      const us = judged(set, candidate);
      const si = judged({ ...set, failed: set.failed && inKw(set.failed) }, inKw(candidate));
      expect(si).toEqual(us);
    }),
    RUNS,
  );
});

test('every answer is whole: figures finite, a check says who clears it, work says what and how long', () => {
  fc.assert(
    fc.property(someCase, ({ set, candidate }) => {
      const result = judged(set, candidate);
      const isWhole = (value: unknown) => typeof value !== 'number' || Number.isFinite(value);
      for (const value of Object.values(result.operatingPoint)) expect(value).toSatisfy(isWhole);
      for (const { grade, by, reading, work, says, cite, have, need, difference } of result.findings) {
        expect([have, need, difference]).toSatisfy((values: unknown[]) => values.every(isWhole));
        expect(by === null).toBe(grade !== 'check');
        expect(reading !== null).toBe(by === 'reading');
        if (grade === 'work') expect(work).not.toBeNull();
        if (work !== null) expect(work.what).not.toBe('');
        if (work !== null) expect(work.hours).toBeGreaterThanOrEqual(0);
        expect(says).not.toMatch(/undefined|null|NaN|\[object/);
        expect(cite).not.toBe('');
      }
      expect(new Set(result.findings.map(({ criterion }) => criterion)).size).toBe(result.findings.length);
    }),
    RUNS,
  );
});
