import { describe, expect, test } from 'vitest';
import { asked } from './asked';
import { changed, example, inside, type Json, keysOf, type Path, printed } from './example';

const told = (whole: Json) => JSON.stringify(asked(JSON.stringify(whole)));

/** Each key left out, and each key null; where both are refused, both name the key. */
function bothWays(whole: Json, path: Path) {
  const absent = asked(JSON.stringify(changed(whole, path, undefined)));
  const none = asked(JSON.stringify(changed(whole, path, null)));
  return { absent, none };
}

const variants: [string, Json][] = [
  ['as printed', printed()],
  ['with a failed motor, through a gear', changed(example(), ['set', 'coupling', 'ratio'], 5)],
  ['on a drive', changed(example(), ['set', 'supply', 'start'], 'drive')],
  [
    'in hazardous areas, with a face and a brake',
    changed(
      changed(
        changed(changed(example(), ['set', 'mounting'], 'foot-and-face'), ['set', 'surroundings', 'classification'], {
          scheme: 'NEC',
          class: 2,
          division: 2,
          groups: ['G'],
          tempCode: 'T4',
        }),
        ['candidates', 0, 'classification'],
        { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 },
      ),
      ['set', 'needs'],
      ['brake', 'heater'],
    ),
  ],
];

describe.each(variants)('null or absence means not known, %s', (_, whole) => {
  const paths = keysOf(whole);

  test('every key of the contract may be either, with one answer, but for those without which there is no case', () => {
    const refused = new Set<string>();
    for (const path of paths) {
      if (path.join('.') === 'set.surroundings.classification') continue;
      const { absent, none } = bothWays(whole, path);
      const key = path.map((part) => (typeof part === 'number' ? '*' : part)).join('.');
      if (absent.ok || none.ok) expect(none, key).toEqual(absent);
      else {
        refused.add(key);
        for (const { problems } of [absent, none]) expect(problems.map((one) => one.path)).toContain(path.join('.'));
      }
    }
    const needed = ['set', 'set.tag', 'set.mounting', 'candidates', 'candidates.*.id'];
    const within = [...refused].filter((key) => !needed.includes(key));
    // A classification is of a scheme and a place in it, or there is none.
    expect(within.filter((key) => !/classification\.(scheme|zone|class|division)$/.test(key))).toEqual([]);
    for (const key of needed) expect(refused).toContain(key);
  });
});

test('classification: null alone says something: unclassified, said by a person', () => {
  const marked = changed(example(), ['set', 'failed', 'classification'], {
    scheme: 'NEC',
    class: 2,
    division: 2,
    groups: ['G'],
    tempCode: 'T4',
  });
  const path = ['set', 'surroundings', 'classification'];
  expect(told(changed(marked, path, null))).not.toBe(told(changed(marked, path, undefined)));
  // The failed motor was marked all the same: neither passes.
  for (const value of [null, undefined])
    expect(told(changed(marked, path, value))).toMatch(/"area-classification","grade":"check"/);
});

test('surroundings of which nothing is said are not unclassified surroundings', () => {
  const marked = changed(example(), ['set', 'failed', 'classification'], { scheme: 'IEC', zone: 22 });
  const path = ['set', 'surroundings'];
  expect(told(changed(marked, path, null))).toBe(told(changed(marked, path, {})));
  expect(told(changed(marked, path, null))).not.toBe(told(changed(marked, path, { classification: null })));
});

test('the walk meets every group of the contract', () => {
  const met = new Set(keysOf(example()).map((path) => path.filter((part) => typeof part === 'string').join('.')));
  for (const key of [
    'set.supply.drive.filter',
    'set.coupling.hub.boreMm',
    'candidates.ratings.hp',
    'candidates.spare.testedOn',
  ])
    expect(met).toContain(key);
  expect(inside(example(), 'asOf')).toBe('2026-11-25');
});
