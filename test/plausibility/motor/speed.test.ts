import { describe, expect, test } from 'vitest';
import { speed } from '@/lib/plausibility/motor/speed';
import { bare, withRow } from '../row';

const gradeOf = (row: Parameters<typeof withRow>[0], rest: Parameters<typeof withRow>[1] = {}) =>
  speed(withRow(row, rest))?.grade ?? null;

// Full-load speeds printed on public data sheets, each with its poles and hertz.
test.each([
  [{ hp: 3, rpm: 1740 }, { poles: 4 }],
  [{ hp: 3, hertz: 50, rpm: 1450 }, { poles: 4 }],
  [{ hp: 1.5, rpm: 1750 }, { poles: 4 }],
  [{ hp: null, kw: 0.75, hertz: 50, rpm: 2900 }, { poles: 2 }],
  [{ hp: null, kw: 5.5, hertz: 50, rpm: 2950 }, { poles: 2 }],
  [{ hp: null, kw: 22, hertz: 50, rpm: 2970 }, { poles: 2 }],
  [{ hp: null, kw: 0.75, hertz: 50, rpm: 1430 }, { poles: 4 }],
])('a speed of a data sheet raises nothing: %j', (row, rest) => {
  expect(gradeOf(row, rest)).toBeNull();
});

describe('what cannot be', () => {
  test('a speed above the field shows the sum', () => {
    expect(speed(withRow({ rpm: 1850 }))).toMatchObject({
      grade: 'wrong',
      field: 'ratings.0.rpm',
      have: 1850,
      expected: 1800,
      says: '120 × 60 Hz / 4 poles = 1800 rpm; 1850 rpm stands on the plate: faster than the field turns.',
    });
  });

  test('a speed of other poles names them', () => {
    const doubt = speed(withRow({ rpm: 1165 }));
    expect(doubt?.grade).toBe('wrong');
    expect(doubt?.says).toContain('it would be a speed of 6 poles at 60 Hz');
  });

  test('without poles a speed that no number of poles has', () => {
    expect(speed(withRow({ rpm: 2000 }, { poles: null }))?.says).toContain('4 poles turn at 1800 rpm at most');
    expect(speed(withRow({ rpm: 3700 }, { poles: null }))?.says).toContain('faster than any field turns');
  });
});

// Slip by design: NEMA MG 10 Table 2-1 (read in one text). By size: from memory, doubled.
test.each([
  ['at the field', { rpm: 1800 }, {}, 'doubtful'],
  ['half a revolution over a field that is no whole number', { rpm: 514 }, { poles: 14 }, 'doubtful'],
  ['one revolution over it', { rpm: 515 }, { poles: 14 }, 'wrong'],
  ['one below the field', { rpm: 1799 }, {}, null],
  ['7 % of slip at 5 hp', { rpm: 1674 }, {}, null],
  ['more than 7 %', { rpm: 1673 }, {}, 'doubtful'],
  ['the same as design D', { rpm: 1673 }, { design: 'D' }, null],
  ['25 % as design D', { rpm: 1350 }, { design: 'D' }, null],
  ['more than 25 %', { rpm: 1349 }, { design: 'D' }, 'wrong'],
  ['12 % at 2 hp', { hp: 2, rpm: 1584 }, {}, null],
  ['an unknown power allows what any design has', { hp: null, rpm: 1400 }, {}, null],
  ['in step with its field', { rpm: 1800 }, { kind: 'permanent-magnet' }, null],
  ['a permanent magnet that slips', { rpm: 1750 }, { kind: 'permanent-magnet' }, 'doubtful'],
  ['either speed of a two-speed motor', { rpm: 1750 }, { kind: 'two-speed', poles: 8 }, null],
  ['50 Hz where the row says 60', { rpm: 1450 }, {}, 'doubtful'],
] as const)('%s', (_, row, rest, grade) => {
  expect(gradeOf(row, rest)).toBe(grade);
});

test.each([
  ['no speed', { rpm: null }],
  ['no hertz', { hertz: null }],
])('is silent on a row with %s', (_, row) => {
  expect(gradeOf({ rpm: 1850, ...row })).toBeNull();
});

test('every row that cannot be is named, and its figures are kept', () => {
  const rows = [1750, 1850, 1900].map((rpm) => ({ hertz: 60, rpm }));
  const doubt = speed(bare({ poles: 4, ratings: rows }));
  expect(doubt?.field).toBe('ratings.1.rpm');
  expect(doubt?.says).toMatch(/^Row 2: .* Row 3 too\.$/);
  expect(doubt?.figures).toBe('poles=4,design=-,kind=- 2:hertz=60,rpm=1850,kw=- 3:hertz=60,rpm=1900,kw=-');
});
