import { describe, expect, test } from 'vitest';
import { refused } from './asked';
import { changed, example, inside, type Json, keysOf, type Path } from './example';

const parts = (path: string): Path => path.split('.').map((part) => (/^\d+$/.test(part) ? Number(part) : part));
const withAt = (path: string, value: Json) => changed(example(), parts(path), value);
const problemAt = (whole: Json, path: string) => refused(whole).find((one) => one.path === path)?.says;

describe('a wrong value is told with its path and what would be right', () => {
  test.each<[string, Json, string]>([
    ['set.mounting', 'wall', 'must be one of foot, face or foot-and-face'],
    ['set.shaftDirection', 'sideways', 'must be one of horizontal, down or up'],
    ['set.rotation', 'left', 'must be one of cw, ccw or either'],
    ['set.coupling.type', 'chain', 'must be one of coupling, close-coupled, gear or belt'],
    ['set.coupling.input', 'spline', 'must be one of hub, quill or pump-shaft'],
    ['set.base.cableEntry', 'bottom', 'must be one of left, right or top'],
    ['set.supply.start', 'star', 'must be one of direct, star-delta, part-winding, soft or drive'],
    ['set.supply.overloadIn', 'delta', 'must be one of line or phase'],
    ['set.supply.phases', 2, 'must be one of 1 or 3'],
    ['set.load.kind', 'linear', 'must be one of constant-torque or quadratic'],
    [
      'candidates.0.kind',
      'dc',
      'must be one of cage, permanent-magnet, reluctance, wound-rotor, single-phase or two-speed',
    ],
    ['candidates.0.winding', 'star-6', 'must be one of star-delta-6, part-winding-6, star-9, delta-9 or star-delta-12'],
    [
      'candidates.0.ratings.0.connection',
      'Y',
      'must be one of star, delta, series-star, parallel-star, series-delta or parallel-delta',
    ],
    ['candidates.0.driveDuty', 'yes', 'must be one of none, general or inverter'],
    ['candidates.0.terminalBox', 'F1', 'must be one of left, right or top'],
    ['candidates.0.washdown', 'epoxy', 'must be one of none, painted or stainless'],
    [
      'candidates.0.has.0',
      'fan',
      'must be one of brake, thermistor, thermostat, rtd, heater, encoder, insulated-bearing or shaft-ground',
    ],
    [
      'set.needs.0',
      'Brake',
      'must be one of brake, thermistor, thermostat, rtd, heater, encoder, insulated-bearing or shaft-ground',
    ],
    ['candidates.0.ip', '55', 'must be IP and two digits, such as IP55; X where the plate shows none'],
    ['candidates.0.duty', 'S11', 'must be a duty type S1 to S10'],
    ['candidates.0.poles', 3, 'must be a whole number of at least 2 and at most 64 and a multiple of 2'],
    ['set.supply.volts', -480, 'must be a number above 0 and at most 15000'],
    ['set.supply.volts', 0, 'must be a number above 0 and at most 15000'],
    ['set.supply.volts', '480', 'must be a number above 0 and at most 15000'],
    ['set.base.shimLimitMm', -0.1, 'must be a number of at least 0 and at most 100'],
    ['candidates.0.ratings.0.pf', 82, 'must be a number above 0 and at most 1'],
    ['set.base.slotting', 'yes', 'must be true or false'],
    ['asOf', '2026-02-30', 'must be a day such as 2026-11-25'],
    ['asOf', '25/11/2026', 'must be a day such as 2026-11-25'],
    ['asOf', '2026-11-25T00:00:00Z', 'must be a day such as 2026-11-25'],
    ['asOf', 20261125, 'must be a day such as 2026-11-25'],
    ['asOf', '', 'must be a day such as 2026-11-25'],
    ['candidates.0.spare.testedOn', '2026-13-01', 'must be a day such as 2026-11-25'],
    ['set.tag', '', 'must be text of at least 1 and at most 60 characters'],
    ['set.tag', ' ', 'must be text of at least 1 and at most 60 characters'],
    ['set.tag', 'P\n101', 'must be one line of plain text'],
    ['set.failed', 'M-1', 'must be a group of keys in braces'],
    ['set.failed', [], 'must be a group of keys in braces'],
    ['candidates', {}, 'must be a list of at most 10000 items'],
    ['candidates.0.ratings', 5, 'must be a list of at most 24 items'],
    ['candidates.0.ratings.0.kw', 3.7, 'give hp or kw, not both'],
    ['candidates.0.ratings.0.voltsMin', 500, 'must not be below voltsMin (500)'],
    ['set.supply.overloadMinA', 20, 'must not be above overloadMaxA (15)'],
    ['set.supply.drive.minHertz', 80, 'must not be above maxHertz (60)'],
    ['set.surroundings.classification', { scheme: 'ATEX' }, 'must be one of IEC or NEC'],
    ['set.surroundings.classification', {}, 'is missing: must be one of IEC or NEC'],
    ['set.surroundings.classification', { scheme: 'IEC', zone: 3 }, 'must be one of 0, 1, 2, 20, 21 or 22'],
    ['set.surroundings.classification', 'Zone 22', 'must be a group of keys in braces'],
  ])('%s = %j', (path, value, says) => {
    const at = {
      'candidates.0.ratings.0.voltsMin': 'candidates.0.ratings.0.volts',
      'set.surroundings.classification': /braces/.test(says)
        ? path
        : `${path}.${/zone|22/.test(says) ? 'zone' : 'scheme'}`,
    }[path];
    expect(problemAt(withAt(path, value), at ?? path)).toBe(says);
    expect(refused(withAt(path, value))).toHaveLength(1);
  });
});

test('what stood there is told beside it, one line and short', () => {
  const stood = (value: Json) => refused(withAt('set.mounting', value))[0]?.value;
  expect(stood('wall')).toBe('"wall"');
  expect(stood(5)).toBe('5');
  expect(stood(['foot'])).toBe('a list of 1');
  expect(stood({ foot: 1 })).toBe('a group of keys');
  expect(stood('a\nb')).toBe('"a\\nb"');
  expect(stood('x'.repeat(10_000))).toHaveLength(80);
});

test('an unknown key is refused in every group of the contract, by its path', () => {
  const whole = changed(example(), ['set', 'surroundings', 'classification'], {
    scheme: 'NEC',
    class: 2,
    division: 2,
    groups: ['G'],
    tempCode: 'T4',
  });
  const isGroup = (path: Path) => {
    const at = path.reduce<Json | undefined>(inside, whole);
    return at !== null && typeof at === 'object' && !Array.isArray(at);
  };
  const groups: Path[] = [[], ['candidates', 0], ['candidates', 0, 'ratings', 0], ...keysOf(whole).filter(isGroup)];
  expect(groups.length).toBeGreaterThan(20);
  for (const group of groups)
    for (const key of ['colour', 'shaftkw', '__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      const path = [...group, key];
      expect(refused(changed(whole, path, 1))).toEqual([
        { path: path.join('.'), value: null, says: 'is not a key known here' },
      ]);
    }
});

test('every problem is told at once, those between keys too', () => {
  let whole = withAt('candidates.0.ratings.0.kw', 3.7);
  whole = changed(whole, ['candidates', 1], inside(inside(whole, 'candidates'), 0) ?? null);
  for (const [path, value] of [
    ['colour', 1],
    ['set.wings', 2],
    ['set.mounting', 'wall'],
    ['set.supply.volts', -1],
    ['set.supply.overloadMinA', 20],
    ['set.coupling.gapMinMm', 5],
    ['set.coupling.gapMaxMm', 3],
    ['candidates.0.ratings.0.pf', 7],
  ] as const)
    whole = changed(whole, parts(path), value);
  expect(
    refused(whole)
      .map(({ path }) => path)
      .sort(),
  ).toEqual([
    'candidates.0.ratings.0.kw',
    'candidates.0.ratings.0.pf',
    'candidates.1.id',
    'candidates.1.ratings.0.kw',
    'colour',
    'set.coupling.gapMinMm',
    'set.mounting',
    'set.supply.overloadMinA',
    'set.supply.volts',
    'set.wings',
  ]);
});

describe('what is no case at all', () => {
  test.each<[string, string, string]>([
    ['nothing', '', 'is empty: must be JSON'],
    ['white space', ' \n\t ', 'is empty: must be JSON'],
    ['a mark of byte order alone', '\uFEFF', 'is empty: must be JSON'],
    ['NaN', '{"set": NaN}', 'is not JSON: line 1, column 9 must be a value (found "NaN}")'],
    ['Infinity', '[-Infinity]', 'is not JSON: line 1, column 2 must be a value or ] (found "-Infinity]")'],
    [
      'a comma too many',
      '{\n  "set": 1,\n}',
      'is not JSON: line 3, column 1 must be a key in double quotes (found "}")',
    ],
    [
      'a comma too few',
      '{\n  "a": 1\n  "b": 2 }',
      'is not JSON: line 3, column 3 must be a comma or } (found "\\"b\\": 2 }")',
    ],
    ['a comma too few in a list', '[1 2]', 'is not JSON: line 1, column 4 must be a comma or ] (found "2]")'],
    ['a colon too few', '{"a" 1}', 'is not JSON: line 1, column 6 must be a colon (found "1}")'],
    [
      'single quotes',
      "{'a': 1}",
      'is not JSON: line 1, column 2 must be a key in double quotes or } (found "\'a\': 1}")',
    ],
    ['a comment', '{} // no', 'is not JSON: line 1, column 4 must be the end of the text (found "// no")'],
    ['two values', '{} {}', 'is not JSON: line 1, column 4 must be the end of the text (found "{}")'],
    [
      'cut off',
      '{"set": {',
      'is not JSON: line 1, column 10 must be a key in double quotes or } (the text ends there)',
    ],
    ['cut off in a text', '["ab', 'is not JSON: line 1, column 5 must be the closing quote (the text ends there)'],
    [
      'a line break in a text',
      '["a\nb"]',
      'is not JSON: line 1, column 4 must be an escape such as \\n, or the closing quote (found "\\nb\\"]")',
    ],
    [
      'a wrong escape',
      '["a\\x"]',
      'is not JSON: line 1, column 4 must be an escape such as \\" or \\u00e9 (found "\\\\x\\"]")',
    ],
    ['a leading zero', '[01]', 'is not JSON: line 1, column 2 must be a value or ] (found "01]")'],
    ['a lone point', '[1.]', 'is not JSON: line 1, column 2 must be a value or ] (found "1.]")'],
    ['a plate', 'MOTOR 5 HP', 'is not JSON: line 1, column 1 must be a value (found "MOTOR 5 HP")'],
  ])('%s', (_, text, says) => {
    expect(refused(text)).toEqual([{ path: '(whole)', value: null, says }]);
  });

  test.each(['null', '5', '"x"', '[]', 'true'])('%s', (text) => {
    expect(refused(text)).toEqual([
      expect.objectContaining({ path: '(whole)', says: 'must be a group of keys in braces' }),
    ]);
  });

  test('a figure without end is no figure', () => {
    const text = JSON.stringify(withAt('set.load.shaftKw', 3.1)).replace('"shaftKw":3.1', '"shaftKw":1e999');
    expect(refused(text)).toEqual([
      { path: 'set.load.shaftKw', value: 'Infinity', says: 'must be a number above 0 and at most 15000' },
    ]);
  });

  test('a set left out and candidates left out', () => {
    expect(refused({})).toEqual([
      { path: 'set', value: null, says: 'is missing: must be a group of keys in braces' },
      { path: 'candidates', value: null, says: 'is missing: must be a list of at most 10000 items' },
    ]);
  });
});

test('a candidate told twice is refused by its second place', () => {
  const one = inside(inside(example(), 'candidates'), 0) ?? null;
  expect(refused(withAt('candidates', [one, changed(one, ['id'], 'M-2'), one]))).toEqual([
    { path: 'candidates.2.id', value: '"M-0412"', says: 'is already used: ids must differ' },
  ]);
});

test('more candidates than are judged at once are refused in one line', () => {
  const many = Array.from({ length: 10_001 }, (_, i) => ({ id: `M-${i}` }));
  expect(refused(withAt('candidates', many))).toEqual([
    { path: 'candidates', value: 'a list of 10001', says: 'must be a list of at most 10000 items' },
  ]);
});
