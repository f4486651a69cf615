import { describe, expect, test } from 'vitest';
import { draftOf } from '@/lib/import/draft';
import { findColumns } from '@/lib/import/find-columns';
import type { Existing, KeptMotor, KeptSet } from '@/lib/import/kept';
import { planner, planRow } from '@/lib/import/plan';
import { refusedFile } from '@/lib/import/refused-file';
import { readRow, rowsOf } from './rows';

const set = (differs: Partial<KeptSet> = {}): KeptSet => ({
  set: { tag: 'SK-101', mounting: 'foot', supply: { volts: 480, hertz: 60 }, load: { shaftKw: 3.1 } },
  service: 'Syrup to kettle',
  criticality: 2,
  area: 'Boiling',
  pump: { description: 'lobe pump', kind: null, maker: 'Quillmoor', serial: null },
  supplyName: null,
  note: null,
  holds: 'M-1',
  ...differs,
});
const motor = (differs: Partial<KeptMotor> = {}): KeptMotor => ({
  motor: { id: 'M-1', frame: '184TC', poles: 4, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }], massKg: 41 },
  place: 'in-set',
  setTag: 'SK-101',
  store: null,
  shelf: null,
  maker: 'Tessaly Dynamo',
  serial: null,
  condition: null,
  rewinds: null,
  note: null,
  unread: null,
  ...differs,
});
const spare = (differs: Partial<KeptMotor> = {}) =>
  motor({ place: 'on-shelf', setTag: null, store: 'Main store', shelf: 'A1', ...differs });
const there: Existing = { set: set(), motor: motor() };
const told = (plan: ReturnType<typeof planRow>) => plan.changes.map(({ field, from, to }) => [field, from, to]);

describe('a row and the register', () => {
  test.each<[string, Record<string, string>]>([
    ['nothing but its tag', {}],
    ['empty cells', { Service: '', HP: '-', Area: 'n/a' }],
    ['other capitals and blanks', { Service: '  SYRUP to  kettle', Frame: '184 tc', Maker: 'TESSALY DYNAMO' }],
    ['5 HP', { HP: '5.0' }],
    ['3.7 kW for 5 hp', { kW: '3.7' }],
    ['the speed of the only rating', { RPM: '1,750', Volts: '460' }],
    ['mass in pounds', { 'Mass (lb)': '90.389' }],
    ['volts as in the register', { 'Supply volts': '480 V' }],
  ])('%s: nothing changes', (_, cells) => {
    expect(planRow(readRow('sets', cells), there)).toMatchObject({ outcome: 'same', changes: [], problems: [] });
  });

  test('what differs is told from what to what', () => {
    const plan = planRow(
      readRow('sets', { Service: 'Wort', 'Supply volts': '400', RPM: '1745', 'Pump kW': '3.3', 'Pump serial': 'Q-9' }),
      there,
    );
    expect(plan.outcome).toBe('changed');
    expect(told(plan)).toEqual([
      ['service', 'Syrup to kettle', 'Wort'],
      ['pumpSerial', null, 'Q-9'],
      ['supplyVolts', '480 V', '400 V'],
      ['shaftKw', '3.1 kW', '3.3 kW'],
      ['rating1.rpm', '1750 rpm', '1745 rpm'],
    ]);
    expect(plan.changes.map(({ thing, record, path, value }) => [thing, record, path, value])).toEqual([
      ['set', 'set', 'service', 'Wort'],
      ['pump', 'set', 'pump.serial', 'Q-9'],
      ['supply', 'set', 'supply.volts', 400],
      ['set', 'set', 'load.shaftKw', 3.3],
      ['motor', 'motor', 'ratings.0.rpm', 1745],
    ]);
  });

  test('a power told in the other unit takes the place of the first', () => {
    expect(told(planRow(readRow('sets', { kW: '5.5' }), there))).toEqual([
      ['rating1.kw', null, '5.5 kW'],
      ['rating1.hp', '5 hp', null],
    ]);
  });

  test('3.7 kW stamped stays kW', () => {
    const kept = { set: set(), motor: motor({ motor: { id: 'M-1', ratings: [{ kw: 3.7 }] } }) };
    expect(planRow(readRow('sets', { HP: '5' }), kept).outcome).toBe('same');
    expect(told(planRow(readRow('sets', { Mounting: 'foot', kW: '3.7' }), null))).toContainEqual([
      'rating1.kw',
      null,
      '3.7 kW',
    ]);
  });

  test('a rating is known by its volts and hertz; another is added', () => {
    const kept = {
      set: set(),
      motor: motor({
        motor: {
          id: 'M-1',
          ratings: [
            { volts: 230, hertz: 60, hp: 5 },
            { volts: 460, hertz: 60, hp: 5 },
          ],
        },
      }),
    };
    expect(told(planRow(readRow('sets', { Volts: '460', Amps: '6.6' }), kept))).toEqual([
      ['rating2.amps', null, '6.6 A'],
    ]);
    expect(told(planRow(readRow('sets', { Volts: '575', Hz: '60', Amps: '5.3' }), kept))).toEqual([
      ['rating3.volts', null, '575 V'],
      ['rating3.hertz', null, '60 Hz'],
      ['rating3.amps', null, '5.3 A'],
    ]);
    expect(planRow(readRow('sets', { Amps: '6.6' }), kept).problems[0]?.says).toMatch(/row 1 or row 2/);
  });

  test('poles that stand in a frame fill what is not known and change nothing that is', () => {
    const kept = (poles: number | null) => ({ set: null, motor: spare({ motor: { id: 'M-1', frame: '90L', poles } }) });
    expect(told(planRow(readRow('motors', { Frame: '100L-4' }), kept(null)))).toContainEqual(['poles', null, '4']);
    const plan = planRow(readRow('motors', { Frame: '100L-4' }), kept(6));
    expect(told(plan)).toEqual([['frame', '90L', '100L']]);
    expect(plan.notes[0]?.says).toMatch(/Poles 4; 6 is recorded/);
  });

  test('a cell that says what is recorded needs no reading', () => {
    const kept = { set: null, motor: spare({ motor: { id: 'M-1', frame: 'QX-9' } }) };
    expect(planRow(readRow('motors', { Frame: 'QX-9' }), kept).outcome).toBe('same');
    expect(planRow(readRow('motors', { Frame: 'QX-8' }), kept).outcome).toBe('refused');
  });

  test.each<[string, 'sets' | 'motors', Record<string, string>, Existing | null, RegExp]>([
    ['a new set that does not say how it holds its motor', 'sets', { Service: 'x', HP: '5' }, null, /foot, face/],
    ['a new set that is only a tag', 'sets', { Service: '' }, null, /heading/],
    [
      'a set with another motor than the register has',
      'sets',
      { 'Motor no': 'M-9' },
      there,
      /holds M-1: record the swap/,
    ],
    [
      'a motor that is on a shelf',
      'sets',
      { 'Motor no': 'M-7' },
      { set: set({ holds: null }), motor: spare() },
      /on a shelf/,
    ],
    [
      'a motor of another set',
      'sets',
      { 'Motor no': 'M-7' },
      { set: set({ holds: null }), motor: motor({ setTag: 'SK-9' }) },
      /in SK-9/,
    ],
    ['a new motor without a place', 'motors', { HP: '5' }, null, /where the motor is/],
    ['a new motor on a shelf of no store', 'motors', { Shelf: 'A1' }, null, /say the store/],
    [
      'a motor in a set that the list puts on a shelf',
      'motors',
      { Store: 'Main store', Shelf: 'A1' },
      { set: null, motor: motor() },
      /in SK-101: record the swap/,
    ],
  ])('%s is refused', (_, kind, cells, existing, says) => {
    const plan = planRow(readRow(kind, cells), existing);
    expect(plan.outcome).toBe('refused');
    expect(plan.changes).toEqual([]);
    expect(plan.problems.map((one) => one.says).join('\n')).toMatch(says);
  });

  test('a new set and a new motor', () => {
    const plan = planRow(readRow('sets', { Mounting: 'foot', HP: '5' }), null);
    expect(plan.outcome).toBe('new');
    expect(plan.notes.map(({ says }) => says)).toEqual(['tells no motor number: one has to be given to its motor']);
    expect(planRow(readRow('motors', { Store: 'Main store', Shelf: 'A1', HP: '5' }), null).outcome).toBe('new');
  });

  test('a motor that goes to repair leaves its shelf', () => {
    expect(told(planRow(readRow('motors', { Status: 'in repair' }), { set: null, motor: spare() }))).toEqual([
      ['place', 'on-shelf', 'at-repair'],
      ['store', 'Main store', null],
      ['shelf', 'A1', null],
    ]);
  });
});

describe('one file', () => {
  const file = (...lines: string[]) => {
    const [headings = '', ...rows] = rowsOf(...lines).map((row) => row);
    const { columns } = findColumns('sets', [headings as never, ...rows], new Map());
    const plans = planner('sets');
    return rows.map((row) => plans.plan(draftOf('sets', row, columns, { decimal: '.' }), null));
  };

  test('the same key again with the same values changes nothing; with others it names the line', () => {
    const plans = file(
      'Tag|Mounting|HP|Service',
      'SK-1|foot|5|Syrup',
      'sk-1|Foot|5.0|',
      'SK-1|foot|7.5|Syrup',
      'SK-2|foot|5|Wort',
    );
    expect(plans.map(({ outcome }) => outcome)).toEqual(['new', 'same', 'refused', 'new']);
    expect(plans[1]?.notes.at(-1)?.says).toBe('says the same as line 2');
    expect(plans[2]?.problems[0]?.says).toMatch(
      /line 2 already with other values \(Rating 1 power hp: 5 hp there, 7.5 hp here\)/,
    );
  });

  test('one motor in two sets is refused', () => {
    const plans = file('Tag|Mounting|Motor no', 'SK-1|foot|M-1', 'SK-2|foot|M-1');
    expect(plans[1]?.problems[0]?.says).toMatch(/motor of SK-1 on line 2/);
  });

  test('two tags that look alike are told', () => {
    expect(file('Tag|Mounting|HP', 'SK-1|foot|5', 'SK1|foot|5')[1]?.notes.at(-1)?.says).toMatch(
      /looks like SK-1 on line 2/,
    );
  });
});

describe('the file of refused rows', () => {
  const rows = rowsOf('Tag|Mounting|Power (kW)|Frob', 'SK-1|foot|abc|x', 'SK-2|feet|5,5|y');
  const { columns } = findColumns('sets', rows, new Map());
  const drafts = rows.slice(1).map((row) => draftOf('sets', row, columns, { decimal: ',' }));

  test('it has the rows as they came, their line and the reason', () => {
    const refused = rows.slice(1).flatMap((row, i) => {
      const { problems } = drafts[i] as (typeof drafts)[0];
      return problems.length > 0 ? [{ row, problems }] : [];
    });
    expect(refusedFile('sets', columns, refused)).toEqual([
      ['Tag', 'Mounting', 'Power (kW)', 'Frob', 'Line', 'Why not'],
      ['SK-1', 'foot', 'abc', 'x', '2', expect.stringMatching(/^Power kW "abc": .*\.$/)],
    ]);
  });

  test('mended and imported again, its own two columns are left out and written anew', () => {
    const again = rowsOf('Tag|Mounting|Power (kW)|Frob|Line|Why not', 'SK-1|foot|5,5|x|2|because');
    const found = findColumns('sets', again, new Map());
    expect(found.columns.map(({ field }) => field)).toEqual(['tag', 'mounting', 'powerKw', null, null, null]);
    const draft = draftOf('sets', again[1] as (typeof again)[0], found.columns, { decimal: ',' });
    expect(planRow(draft, null).outcome).toBe('new');
    expect(refusedFile('sets', found.columns, [])[0]).toEqual([
      'Tag',
      'Mounting',
      'Power (kW)',
      'Frob',
      'Line',
      'Why not',
    ]);
  });
});
