import { expect, test } from 'vitest';
import { assess, type WhereaboutsById } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { assessCase } from '@/lib/plant/assess-case';
import { nema } from './whole-case';

/** The base place and its twin under several ids, each with what differs. */
const listed = (candidates: Record<string, object>, whereabouts?: WhereaboutsById) =>
  assess(
    assessCase.parse({
      set: { ...nema.set, base: { shimLimitMm: 6, slotting: true }, failed: { ...nema.motor, id: 'M-0' } },
      candidates: Object.entries(candidates).map(([id, differs]) => ({ ...nema.motor, ...differs, id })),
    }),
    defaultSettings,
    whereabouts,
  ).results;
const ids = (results: { id: string }[]) => results.map(({ id }) => id);

test('straight, then a short reading, then work, then a person, then what is out', () => {
  const results = listed({
    out: { ratings: [{ volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 }] },
    person: { duty: 'S3' },
    work: { frame: '182T' },
    reading: { ip: null, enclosure: null },
    straight: {},
  });
  expect(results.map(({ id, rank, verdict }) => [id, rank, verdict])).toEqual([
    ['straight', 1, 'straight-swap'],
    ['reading', 2, 'check-first'],
    ['work', 3, 'swap-with-work'],
    ['person', 4, 'check-first'],
    ['out', 5, 'unsuitable'],
  ]);
});

test('a motor to buy and one that runs elsewhere stand behind the shelf, whatever their verdict', () => {
  const where = new Map([
    ['buy', 'to-buy'],
    ['other', 'other-set'],
    ['store', 'same-store'],
  ] as const);
  const results = listed({ buy: {}, other: {}, store: { frame: '182T' } }, where);
  expect(ids(results)).toEqual(['store', 'other', 'buy']);
  expect(results[0]?.verdict).toBe('swap-with-work');
});

test('among equals the nearer store, then the nearer power, then the id', () => {
  const where = new Map([
    ['far', 'other-site'],
    ['near', 'same-store'],
  ] as const);
  expect(ids(listed({ far: {}, near: {} }, where))).toEqual(['near', 'far']);
  const ratings = [{ volts: 460, hertz: 60, hp: 7.5, rpm: 1750, amps: 8.8 }];
  expect(ids(listed({ larger: { ratings }, same: {} }))).toEqual(['same', 'larger']);
  expect(ids(listed({ 'M-9': {}, 'M-10': {}, 'M-2': {} }))).toEqual(['M-10', 'M-2', 'M-9']);
});

test('a spare whose winding reads too low is last and unsuitable, and the reason is said', () => {
  // IEEE 43-2013 table 3: 5 MΩ for a random winding below 1 kV (from memory)
  const [first, last] = listed({
    damp: { spare: { insulationMohm: 0.2, testedOn: '2026-01-01' } },
    dry: { frame: '182T' },
  });
  expect(first?.id).toBe('dry');
  expect(last).toMatchObject({ id: 'damp', verdict: 'unsuitable', why: expect.stringMatching(/^Not offered: /) });
});

test('hours: the base, each distinct work once', () => {
  const [one] = listed({ one: { frame: '182T', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 9.4 }] } });
  const works = new Map((one?.findings ?? []).flatMap(({ work }) => (work ? [[work.id, work.hours] as const] : [])));
  expect([...works.keys()]).toContain('overload');
  expect(works.size).toBeGreaterThan(1);
  expect(one?.hours).toBeCloseTo(2 + [...works.values()].reduce((sum, each) => sum + each, 0), 3);
});

test('every candidate but the last says what puts it above the next', () => {
  const results = listed({ a: {}, b: { frame: '182T' }, c: { duty: 'S3' } });
  expect(results[0]?.why).toMatch(/^Above b: a straight swap/);
  expect(results[1]?.why).toMatch(/^Above c: /);
  expect(results[2]?.why).toBe('Last in the list.');
  expect(listed({ a: {} })[0]?.why).toBe('The only candidate.');
});
