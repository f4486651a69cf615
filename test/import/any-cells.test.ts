import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Column, draftOf } from '@/lib/import/draft';
import type { Field } from '@/lib/import/field';
import { fieldsOf } from '@/lib/import/fields';
import { findColumns, normalHeading } from '@/lib/import/find-columns';
import type { Existing } from '@/lib/import/kept';
import { planRow } from '@/lib/import/plan';
import type { CellType } from '@/lib/import/sheet-row';
import { motor } from '@/lib/plant/motor';
import { set } from '@/lib/plant/set';
import { slowness } from '../yardstick';

const RUNS = { seed: 20261127 };

/** Bits of what people type, joined as it comes, and any text at all. */
const bits = fc
  .array(
    fc.constantFrom(
      ...[
        '5',
        '7½',
        '1,450',
        '230/460',
        'HP',
        'kW',
        ' ',
        '/',
        '-',
        '.',
        ',',
        'V',
        '°F',
        '184TC',
        '100L-4',
        'IM B3',
        'IP55',
      ],
      ...[
        'E+05',
        '2026-03-04',
        '#N/A',
        '#REF!',
        '"',
        "'",
        'Zone 22',
        'Class II Div 2',
        'n/a',
        'PTC',
        '\n',
        '\u2044',
        '½',
        'Total',
      ],
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));
const anyCell = fc.oneof(bits, fc.string({ maxLength: 60 }), fc.string({ maxLength: 30, unit: 'binary' }));
const anyType = fc.constantFrom<CellType>('text', 'number', 'date', 'bool', 'error', 'empty');
const anyUnit = fc.constantFrom(null, 'mm', 'in', 'kw', 'hp', 'f', 'kg', 'nema', 'no unit');

const SUITABLE: Partial<Record<Field['shape']['as'], readonly string[]>> = {
  figure: [
    '28 mm',
    '1-1/8 in',
    '4',
    '1,450',
    '7.5',
    '0,82',
    '40 kg',
    '90 lb',
    '3 hp',
    '3.1 kW',
    '30 Nm',
    '100 ft',
    '104 F',
    '12,5',
    '1.15',
  ],
  plate: [
    '5 HP',
    '3.7 kW',
    '230/460',
    '460',
    '13.2/6.6',
    '60',
    '1750',
    '1450 (4P)',
    '184TC',
    '100L-4 B35',
    'TEFC',
    'F',
    'S1',
    '0.82',
    '89.5',
    'IM B3',
    'F-1',
    'Y',
  ],
  'plate-text': ['5 HP 460V 60HZ 1750 RPM FRAME 184T', '400/690 V 50 Hz 5,5 kW 1450 min-1 IP55', 'SER. NO. 12'],
  'yes-no': ['yes', 'no'],
  day: ['2026-11-25', '25.11.2026', '25-Nov-26'],
  auxiliaries: ['PTC, heater', 'none', 'brake'],
  rotation: ['either', 'CW from drive end'],
  classification: ['Zone 22, IIIB, 125 °C', 'Class I Div 2 Group D T3', 'unclassified'],
};
const likelyCell = ({ shape, id }: Field): fc.Arbitrary<string> => {
  const words = shape.as === 'word' ? Object.values(shape.words).flat() : [];
  const own = id === 'ip' || id === 'placeIp' ? ['IP55', '55'] : (SUITABLE[shape.as] ?? words);
  return own.length === 0
    ? anyCell
    : fc.oneof({ weight: 12, arbitrary: fc.constantFrom(...own) }, { weight: 1, arbitrary: anyCell });
};

describe.each(['sets', 'motors'] as const)('whatever stands in a sheet of %s', (kind) => {
  const ids = [
    ...fieldsOf(kind)
      .filter(({ id }) => !/^rating([4-9]|\d\d)/.test(id))
      .map(({ id }) => id),
    null,
    'no such field',
  ];
  const anyColumn = (index: number): fc.Arbitrary<Column> =>
    fc.record({
      index: fc.constant(index),
      heading: anyCell,
      field: fc.constantFrom(...(index === 0 ? [kind === 'sets' ? 'tag' : 'plantNumber'] : ids)),
      unit: anyUnit,
    });
  const anyRow = fc.integer({ min: 0, max: 24 }).chain((width) =>
    fc.record({
      columns: fc.tuple(...Array.from({ length: width }, (_, i) => anyColumn(i))),
      cells: fc.array(anyCell, { maxLength: width + 2 }),
      types: fc.option(fc.array(anyType, { maxLength: width }), { nil: undefined }),
      decimal: fc.constantFrom('.', ',', null),
    }),
  );

  test('a row is read or refused with its reasons, and what is read is the plant’s', () => {
    fc.assert(
      fc.property(anyRow, ({ columns, cells, types, decimal }) => {
        const draft = draftOf(kind, { line: 1, cells, ...(types ? { types } : {}) }, columns, { decimal });
        for (const { says } of [...draft.problems, ...draft.notes]) expect(says).toMatch(/\S/);
        if (draft.problems.length > 0 || draft.skip !== null) return;
        expect(draft.key).not.toBeNull();
        if (draft.motor) expect(motor.safeParse({ id: 'none', ...draft.motor.motor }).error?.issues ?? []).toEqual([]);
        if (draft.set) expect(set.safeParse({ mounting: 'foot', ...draft.set.set }).error?.issues ?? []).toEqual([]);
        expect(planRow(draft, null).outcome).toMatch(/^(new|refused)$/);
      }),
      { ...RUNS, numRuns: 3_000 },
    );
  });

  /** Cells that mostly suit their columns, below a key. */
  const likelyRow = fc
    .uniqueArray(fc.constantFrom(...fieldsOf(kind)), { maxLength: 7, selector: ({ id }) => id })
    .chain((fields) =>
      fc.record({
        columns: fc.constant(
          [kind === 'sets' ? 'tag' : 'plantNumber', ...fields.map(({ id }) => id)].map(
            (id, index): Column => ({ index, heading: id, field: id, unit: null }),
          ),
        ),
        cells: fc.tuple(fc.constantFrom('SK-101', 'M 7'), ...fields.map((field) => likelyCell(field))),
        decimal: fc.constantFrom('.' as const, ',' as const, null),
      }),
    );

  test('a row read again after it was taken changes nothing', () => {
    let taken = 0;
    fc.assert(
      fc.property(likelyRow, ({ columns, cells, decimal }) => {
        const draft = draftOf(kind, { line: 1, cells }, columns, { decimal });
        if (draft.problems.length > 0 || draft.skip !== null) return;
        taken += 1;
        // What is kept of a motor tells where it is, whatever the row tells.
        const shelf = draft.motor?.place === 'on-shelf' ? { store: 'Main store', shelf: 'A1' } : {};
        const place = kind === 'sets' ? 'in-set' : 'at-repair';
        const motorKept = draft.motor && { place, ...shelf, setTag: draft.key, ...draft.motor };
        const kept = { set: draft.set && { ...draft.set, holds: null }, motor: motorKept } as unknown as Existing;
        expect(planRow(draft, kept)).toMatchObject({ outcome: 'same', changes: [] });
      }),
      { ...RUNS, numRuns: 2_000 },
    );
    expect(taken).toBeGreaterThan(400);
  });

  test('columns are found or not, never a fault', () => {
    fc.assert(
      fc.property(fc.array(fc.array(anyCell, { maxLength: 12 }), { maxLength: 8 }), (rows) => {
        const found = findColumns(
          kind,
          rows.map((cells, i) => ({ line: i + 1, cells })),
          new Map(),
        );
        const fields = found.columns.flatMap(({ field }) => (field === null ? [] : [field]));
        expect(new Set(fields).size).toBe(fields.length);
      }),
      { ...RUNS, numRuns: 400 },
    );
  });

  test('a cell of 100 kB is read in no time', () => {
    const bad = [
      '1',
      ' ',
      '-',
      '/',
      ',',
      '.',
      '1/',
      '1 ',
      'a ',
      '(',
      '(m',
      'E',
      '½',
      '"',
      'T1 ',
      'Zone ',
      'IM B3 ',
      '\u00A0',
    ].flatMap((bit) => [
      bit.repeat(100_000 / bit.length),
      `${bit.repeat(100_000 / bit.length)}x`,
      // What is still read, at its longest.
      bit.repeat(7_900 / bit.length),
      `${bit.repeat(7_900 / bit.length)}x`,
    ]);
    const columns = fieldsOf(kind)
      .slice(0, 170)
      .map(({ id }, index): Column => ({ index, heading: id, field: id, unit: null }));
    for (const cell of bad) {
      const cells = columns.map(() => cell);
      const start = performance.now();
      draftOf(kind, { line: 1, cells }, columns, { decimal: '.' });
      findColumns(
        kind,
        [
          { line: 1, cells: cells.slice(0, 10) },
          { line: 2, cells: cells.slice(0, 10) },
        ],
        new Map(),
      );
      normalHeading(cell);
      // 170 cells at once; what grows with the square of the length would take minutes.
      const took = performance.now() - start;
      if (took > 30_000) expect(took).toBeLessThan(30_000 * slowness());
    }
  });
});
