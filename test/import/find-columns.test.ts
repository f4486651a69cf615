import { describe, expect, test } from 'vitest';
import { findColumns, normalHeading } from '@/lib/import/find-columns';
import { rowsOf } from './rows';

const none = new Map<string, string | null>();
const told = (kind: 'sets' | 'motors', rows: ReturnType<typeof rowsOf>, known = none) => {
  const found = findColumns(kind, rows, known);
  return found.columns.map(({ field, unit }) => (unit === null ? field : `${field} in ${unit}`));
};

describe('headings', () => {
  test.each([
    ['Power (kW)', 'powerKw in kw'],
    ['Motor HP', 'powerHp in hp'],
    ['Power', 'power'],
    ['Leistung in kW', 'powerKw in kw'],
    ['Nennspannung [V]', 'volts in v'],
    ['Ambient °F', 'ambientC in f'],
    ['Shaft height [in]', 'seat.shaftHeightMm in in'],
    ['Shaft height, mm', 'seat.shaftHeightMm in mm'],
    ['Achshöhe', 'seat.shaftHeightMm'],
    ['Baugröße', 'frame'],
    ['Frame (NEMA)', 'frame in nema'],
    ['IEC frame', 'frame in iec'],
    ['Pump BHP', 'shaftKw in hp'],
    ['TAG NO.', 'tag'],
    ['tag_number', 'tag'],
    ['Equipment  #', 'tag'],
    ['Motor Manufacturer', 'maker'],
    ['F.L.A.', 'amps'],
    ['cos φ', 'pf'],
    ['Nom. Eff. (%)', 'efficiencyPct in %'],
    ['Voltge', 'volts'],
    ['Tensión', 'volts'],
    ['Puissance (kW)', 'powerKw in kw'],
    ['Weight (lbs)', 'massKg in lb'],
    ['Encl.', 'enclosure'],
    ['Frob', null],
    ['Colour of paint', null],
    ['Power (bar)', null],
  ])('%s', (heading, field) => {
    expect(told('sets', rowsOf(`Pump|${heading}|Maker`, 'x|y|z'))[1]).toBe(field);
  });

  test('a sheet of spares says Mounting and Note of the motor itself', () => {
    expect(told('motors', rowsOf('Motor no|Mounting|Note|Bin', 'M-1|IM B3||A1'))).toEqual([
      'plantNumber',
      'im',
      'note',
      'shelf',
    ]);
  });

  test('titles above the headings are passed over', () => {
    const rows = rowsOf('Harrowmere works', 'Pump list, issue 4||', '', 'Tag|HP|Volts', 'SK-101|5|460');
    const found = findColumns('sets', rows, none);
    expect(found.headingLines).toEqual([4]);
    expect(found.firstDataLine).toBe(5);
    expect(found.columns.map(({ field }) => field)).toEqual(['tag', 'powerHp', 'volts']);
    expect(found.columns[2]).toMatchObject({ because: 'name', examples: ['460'] });
  });

  test('a group over several columns decides between the pump and the motor', () => {
    const rows = rowsOf(
      '|Pump|||Motor||',
      'Tag|Maker|Serial|RPM|Maker|Serial|RPM',
      'SK-101|Quillmoor|1|350|Tessaly|2|1750',
    );
    const found = findColumns('sets', rows, none);
    expect(found.headingLines).toEqual([1, 2]);
    expect(found.columns.map(({ field }) => field)).toEqual([
      'tag',
      'pumpMaker',
      'pumpSerial',
      'pumpRpm',
      'maker',
      'serial',
      'rpm',
    ]);
    expect(found.columns[1]?.heading).toBe('Pump Maker');
  });

  test('a heading that reaches down over two rows stays what it is', () => {
    const rows = rowsOf('Tag|Service|Motor||', '||HP|Volts|Frame', 'SK-101|Syrup|5|460|184T');
    expect(told('sets', rows)).toEqual(['tag', 'service', 'powerHp in hp', 'volts in v', 'frame']);
  });

  test('a second row may hold the units', () => {
    const rows = rowsOf('Tag|Power|Weight|Ambient', '|kW|lb|°F', 'SK-101|5.5|90|104');
    const found = findColumns('sets', rows, none);
    expect(found.headingLines).toEqual([1, 2]);
    expect(found.columns.map(({ field, unit }) => [field, unit])).toEqual([
      ['tag', null],
      ['powerKw', 'kw'],
      ['massKg', 'lb'],
      ['ambientC', 'f'],
    ]);
  });

  test('the headings repeated below a page break are no data', () => {
    const rows = rowsOf('Tag|HP|Volts', 'Tag|HP|Volts', 'SK-101|5|460');
    const found = findColumns('sets', rows, none);
    expect(found.firstDataLine).toBe(3);
    expect(found.columns[0]?.examples).toEqual(['SK-101']);
  });

  test('of two columns for one field the fuller and nearer one has it and the other is told', () => {
    const found = findColumns('sets', rowsOf('Tag|Frame|Motor frame', 'SK-1||184T', 'SK-2||213T'), none);
    expect(found.columns.map(({ field }) => field)).toEqual(['tag', null, 'frame']);
    expect(found.problems).toEqual([{ column: 1, says: '"Frame" names Frame too: "Motor frame" is taken for it.' }]);
  });

  test('what a person said before wins over the name, and so does that a column is left out', () => {
    const known = new Map<string, string | null>([
      ['power', 'powerKw'],
      [normalHeading('Frob!'), 'service'],
      ['volts', null],
      ['hertz', 'no-such-field'],
    ]);
    const found = findColumns('sets', rowsOf('Tag|Power|Frob|Volts|Hertz', 'SK-1|5|Syrup|460|60'), known);
    expect(found.columns.map(({ field, because }) => [field, because])).toEqual([
      ['tag', 'name'],
      ['powerKw', 'remembered'],
      ['service', 'remembered'],
      [null, 'remembered'],
      ['hertz', 'name'],
    ]);
  });

  test('Line counts only beside Why not, as in a file of refused rows', () => {
    expect(told('sets', rowsOf('Tag|Area|Line|Why not', 'SK-1|Boil|7|x'))).toEqual(['tag', 'area', null, null]);
  });
});

describe('no headings', () => {
  test('what stands in a column tells it where it can hardly be anything else', () => {
    const rows = rowsOf(
      'SK-101|5 HP|460|60|1750|184T|TEFC|IP55|Syrup',
      'SK-102|7.5 HP|460|60|1765|213T|TEFC|IP55|Wort',
      'SK-103|10 HP|230/460|60|1765|215T|TEFC|IP56|Malt',
    );
    const found = findColumns('sets', rows, none);
    expect(found.headingLines).toEqual([]);
    expect(found.firstDataLine).toBe(1);
    expect(found.columns.map(({ field }) => field)).toEqual([
      'tag',
      'power',
      'volts',
      'hertz',
      'rpm',
      'frame',
      'enclosure',
      'ip',
      null,
    ]);
    expect(found.columns.map(({ because }) => because)).toEqual([...Array(8).fill('content'), null]);
  });

  test('an empty sheet has no columns', () => {
    expect(findColumns('sets', [], none)).toEqual({ headingLines: [], firstDataLine: null, columns: [], problems: [] });
    expect(findColumns('motors', rowsOf('', '|'), none).firstDataLine).toBeNull();
  });
});
