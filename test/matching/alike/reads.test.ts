import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Aspect } from '@/lib/matching/alike/aspect';
import { aspects, fittedOut, supplied, WITHOUT_WEIGHT } from '@/lib/matching/alike/aspects';
import { ContextAsRead } from '@/lib/matching/alike/context-as-read';
import { judgeAlike } from '@/lib/matching/alike/judge-alike';
import { assess } from '@/lib/matching/assess';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import { criteria } from '@/lib/matching/criteria';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { anyMotor, anySet } from '../load/any-case';
import { someCase, someList } from '../plant-cases';

const all = [supplied, fittedOut, ...aspects];

test('every criterion is asked in one aspect, or never grades worse than a note', () => {
  const asked = all.flatMap(({ criteria }) => criteria);
  expect(new Set(asked).size).toBe(asked.length);
  const left = criteria.filter(([, ask]) => !asked.includes(ask)).map(([id]) => id);
  expect(left).toEqual([...WITHOUT_WEIGHT]);
});

/** What a frame's mounting is worked out of (lib/standards/motor-dimensions). */
const FIT = ['frame', 'mounting', 'poles', 'design', 'codeLetter', 'measured', 'ratings.hp', 'ratings.kw'];

/** The thing itself, noting down the path of whatever is read of it in the end. */
function noted<T>(thing: T, read: Set<string>, path = ''): T {
  if (thing === null || typeof thing !== 'object') return thing;
  return new Proxy(thing, {
    get(of, key) {
      const value = Reflect.get(of, key);
      if (typeof key === 'symbol' || typeof value === 'function') return value;
      const below = Array.isArray(of) ? path : path === '' ? key : `${path}.${key}`;
      if (value === null || typeof value !== 'object') read.add(below);
      return noted(value, read, below);
    },
    ownKeys(of) {
      read.add(path);
      return Reflect.ownKeys(of);
    },
  });
}

const isNamed = (read: string, paths: readonly string[]) =>
  paths.some((path) => read === path || read.startsWith(`${path}.`) || path.startsWith(`${read}.`));

/** What the aspect read beyond what it names. */
function beyond({ criteria, ofSet, ofMotor, isByFit }: Aspect, set: PumpSet, motor: Motor): string[] {
  const fit = isByFit ? FIT : [];
  const failedFit = fit.map((path) => `failed.${path}`);
  const named = {
    set: ofSet === 'all' ? null : [...ofSet, ...failedFit],
    motor: [...ofMotor, ...fit],
  };
  const found: string[] = [];
  for (const ask of criteria) {
    const [ofSetRead, ofMotorRead] = [new Set<string>(), new Set<string>()];
    const [oneSet, oneMotor] = [noted(set, ofSetRead), noted(motor, ofMotorRead)];
    ask(oneSet, oneMotor, new ContextAsRead(oneSet, oneMotor, defaultSettings, ratingRowOf));
    if (named.set !== null) for (const path of ofSetRead) if (!isNamed(path, named.set)) found.push(`set ${path}`);
    for (const path of ofMotorRead) if (!isNamed(path, named.motor)) found.push(`motor ${path}`);
  }
  return found;
}

const someOrAny = fc.oneof(
  someCase.map(({ set, candidate }) => ({ set, candidate })),
  fc.record({ set: anySet, candidate: anyMotor }),
);

test.each(all.map((aspect) => [aspect.id, aspect] as const))('%s reads nothing that it does not name', (_, aspect) => {
  fc.assert(
    fc.property(someOrAny, ({ set, candidate }) => {
      expect(beyond(aspect, set, candidate)).toEqual([]);
    }),
    { seed: 20261129, numRuns: 1_500 },
  );
});

test('pairs judged together get the verdict and hours of the whole judgement, whatever a plate or a place tells', () => {
  const judge = judgeAlike(defaultSettings); // one for all runs: what it kept of earlier pairs must hold for later ones
  const verdicts = new Map<string, number>();
  const asked = fc.oneof(
    { weight: 2, arbitrary: someList },
    { weight: 1, arbitrary: someCase.map(({ set, candidate }) => ({ set, candidates: [candidate] })) },
    { weight: 1, arbitrary: fc.record({ set: anySet, candidates: fc.tuple(anyMotor) }) },
  );
  fc.assert(
    fc.property(asked, ({ set, candidates }) => {
      const { results } = assess({ set, candidates: [...candidates], asOf: null }, defaultSettings);
      const placed = judge.ofSet(set);
      for (const candidate of candidates) {
        const result = results.find(({ id }) => id === candidate.id);
        const low = result?.verdict === 'unsuitable' && !result.findings.some(({ grade }) => grade === 'block');
        if (result === undefined || low) continue; // refused by its insulation, which is no finding
        verdicts.set(result.verdict, (verdicts.get(result.verdict) ?? 0) + 1);
        const fit = judge.fit(placed, judge.ofMotor(candidate));
        expect(fit === null ? 'unsuitable' : fit.verdict, `${candidate.id} for ${set.tag}`).toBe(result.verdict);
        if (fit === null) continue;
        expect(fit.hours).toBe(result.hours);
        expect(fit.needsWork).toBe(result.findings.some(({ work }) => work !== null));
        const checks = result.findings.filter(({ grade }) => grade === 'check');
        const cleared =
          checks.length === 0 ? 'nobody' : checks.some(({ by }) => by === 'person') ? 'person' : 'readings';
        expect(fit.clearedBy).toBe(cleared);
      }
    }),
    { seed: 20261129, numRuns: 1_500 },
  );
  for (const verdict of ['straight-swap', 'swap-with-work', 'check-first', 'unsuitable'])
    expect(verdicts.get(verdict) ?? 0, verdict).toBeGreaterThan(20);
});
