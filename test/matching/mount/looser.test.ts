import fc from 'fast-check';
import { test } from 'vitest';
import { contextOf } from '@/lib/matching/context';
import { criteria } from '@/lib/matching/criteria';
import { defaultSettings } from '@/lib/matching/default-settings';
import { CRITERIA, GRADES } from '@/lib/matching/finding';
import { motor, set } from '../easy';

type SetParts = NonNullable<Parameters<typeof set>[0]>;

const mountCriteria = criteria.filter(([id]) => CRITERIA.indexOf(id) < 11);

const FRAMES = [
  ['143T', null],
  ['145T', null],
  ['182T', null],
  ['184T', null],
  ['182/4T', null],
  ['213T', null],
  ['254U', null],
  ['254T', null],
  ['184TC', 'foot and face'],
  ['184TC', 'face'],
  ['184TY', null],
  ['286TS', null],
  ['184JM', null],
  ['100L', 'IM B3'],
  ['112M', 'IM B3'],
  ['112M', 'IM B35'],
  ['112M', 'IM B5'],
  ['132S', 'IM B34'],
  ['112M', null],
  [null, null],
] as const;

const frame = fc.constantFrom(...FRAMES);
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null });
const mm = (max: number) => maybe(fc.integer({ min: 0, max: max * 10 }).map((tenths) => tenths / 10));
const places = fc.record({
  mounting: fc.constantFrom('foot' as const, 'face' as const, 'foot-and-face' as const),
  type: fc.constantFrom('coupling' as const, 'close-coupled' as const, 'gear' as const, 'belt' as const),
  was: maybe(frame),
  is: frame,
  bushed: maybe(fc.boolean()),
  lengthMm: maybe(fc.integer({ min: 20, max: 120 })),
  gapMm: mm(20),
  shimsPresentMm: mm(15),
});

interface Limits {
  shimLimitMm: number;
  takeUpMm: number;
  slotting: boolean;
  transitionBase: boolean;
  sleeve: boolean;
  bushing: boolean;
  replaceable: boolean;
  reboreToMm: number;
  gapOpensMm: number;
}
const limits: fc.Arbitrary<Limits> = fc.record({
  shimLimitMm: fc.integer({ min: 0, max: 20 }),
  takeUpMm: fc.integer({ min: 0, max: 40 }),
  slotting: fc.boolean(),
  transitionBase: fc.boolean(),
  sleeve: fc.boolean(),
  bushing: fc.boolean(),
  replaceable: fc.boolean(),
  reboreToMm: fc.integer({ min: 10, max: 60 }),
  gapOpensMm: fc.integer({ min: 0, max: 20 }),
});

type Place = typeof places extends fc.Arbitrary<infer P> ? P : never;

function gradesOf(place: Place, limit: Limits): Map<string, number> {
  const { shimLimitMm, takeUpMm, slotting, transitionBase, sleeve, bushing, replaceable, reboreToMm } = limit;
  const { mounting, type, was, bushed, lengthMm, gapMm, shimsPresentMm } = place;
  const parts: SetParts = {
    mounting,
    failed: was === null ? null : { id: 'M-0', poles: 4, frame: was[0], mounting: was[1] },
    coupling: {
      type,
      takeUpMm,
      gapMm,
      gapMinMm: gapMm === null ? null : gapMm / 2,
      gapMaxMm: gapMm === null ? null : gapMm + limit.gapOpensMm,
      hub: { bushed, lengthMm, sleeve, replaceable, reboreToMm },
      quill: { bushing },
    },
    base: { shimLimitMm, shimsPresentMm, slotting, transitionBase },
  };
  const pumpSet = set(parts);
  const candidate = motor({ frame: place.is[0], mounting: place.is[1] });
  const context = contextOf(pumpSet, candidate, { settings: defaultSettings, asOf: null });
  return new Map(
    mountCriteria.map(([id, ask]) => [id, GRADES.indexOf(ask(pumpSet, candidate, context)?.grade ?? 'ok')]),
  );
}

/** The looser of two, limit by limit. */
const looser = (a: Limits, b: Limits): Limits => ({
  shimLimitMm: Math.max(a.shimLimitMm, b.shimLimitMm),
  takeUpMm: Math.max(a.takeUpMm, b.takeUpMm),
  slotting: a.slotting || b.slotting,
  transitionBase: a.transitionBase || b.transitionBase,
  sleeve: a.sleeve || b.sleeve,
  bushing: a.bushing || b.bushing,
  replaceable: a.replaceable || b.replaceable,
  reboreToMm: Math.max(a.reboreToMm, b.reboreToMm),
  gapOpensMm: Math.max(a.gapOpensMm, b.gapOpensMm),
});

test('a looser limit never worsens a grade of the mount', () => {
  fc.assert(
    fc.property(places, limits, limits, (place, tight, other) => {
      const before = gradesOf(place, tight);
      const after = gradesOf(place, looser(tight, other));
      return [...after].every(([id, grade]) => grade <= (before.get(id) ?? -1));
    }),
    { numRuns: 300, seed: 1 },
  );
});
