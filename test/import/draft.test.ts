import { describe, expect, test } from 'vitest';
import { draftOf } from '@/lib/import/draft';
import { findColumns } from '@/lib/import/find-columns';
import type { CellType } from '@/lib/import/sheet-row';
import { readRow, rowsOf } from './rows';

type Cells = Record<string, string | [string, CellType]>;

describe('a motor as its cells tell it', () => {
  test.each<[string, Cells, object]>([
    ['hp as stamped', { HP: '7½' }, { ratings: [{ hp: 7.5 }] }],
    ['its unit in the cell', { Power: '5,5 kW' }, { ratings: [{ kw: 5.5 }] }],
    ['a unit that is not the heading’s', { HP: '5.5 kW' }, { ratings: [{ kw: 5.5 }] }],
    ['hp and kW that agree: the first stands', { HP: '5', kW: '3.7' }, { ratings: [{ hp: 5 }] }],
    ['both in one cell', { Power: '5 HP (3.7 kW)' }, { ratings: [{ hp: 5 }] }],
    [
      'two voltages, two currents',
      { HP: '5', Volts: '230/460', Amps: '13.2/6.6', Hz: '60', RPM: '1,750' },
      {
        ratings: [
          { volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 },
          { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 },
        ],
      },
    ],
    ['a frame with its poles and mounting', { Frame: '100L-4 B35' }, { frame: '100L', poles: 4, mounting: 'IM B35' }],
    ['a frame typed with a blank', { Frame: '184 tc' }, { frame: '184TC' }],
    ['the heading says NEMA', { 'Frame (NEMA)': '56' }, { frame: 'NEMA 56' }],
    ['ambient in °F', { 'Ambient °F': '104' }, { ambientC: 40 }],
    ['IP without its letters', { IP: '55' }, { ip: 'IP55' }],
    ['an IP under enclosure', { Encl: 'IP 55' }, { ip: 'IP55' }],
    ['pounds', { 'Weight (lbs)': '90' }, { massKg: 40.823313 }],
    ['a class with its temperature', { Insulation: '155(F)' }, { insulation: 'F' }],
    ['duty', { Duty: 'Cont.' }, { duty: 'S1' }],
    ['an efficiency as a share', { Eff: ['0.895', 'number'] }, { ratings: [{ efficiencyPct: 89.5 }] }],
    ['noise of a spreadsheet', { kW: ['3.7000000000000002', 'number'] }, { ratings: [{ kw: 3.7 }] }],
    [
      'a class mark',
      { 'Area mark': 'Class II Div 2 Group G T4' },
      { classification: { scheme: 'NEC', class: 2, division: 2, groups: ['G'], tempCode: 'T4' } },
    ],
    [
      'a zone',
      { 'Area mark': 'Zone 22, IIIB, 125 °C' },
      { classification: { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } },
    ],
    ['auxiliaries', { Auxiliaries: 'PTC, space heater' }, { has: ['thermistor', 'heater'] }],
    ['none of them', { Auxiliaries: 'none' }, { has: [] }],
    ['a length in inches', { 'Shaft dia (in)': '1-1/8' }, { measured: { shaftDiameterMm: 28.575 } }],
    ['a length with its own unit', { 'Shaft dia': '28 mm' }, { measured: { shaftDiameterMm: 28 } }],
    ['a day of a German sheet', { 'Tested on': '25.11.2026' }, { spare: { testedOn: '2026-11-25' } }],
    ['a day cell', { 'Tested on': ['2026-11-25T00:00:00', 'date'] }, { spare: { testedOn: '2026-11-25' } }],
    ['a day that can be one only', { 'Tested on': '25/11/2026' }, { spare: { testedOn: '2026-11-25' } }],
    [
      'a whole plate',
      { Nameplate: '5 HP 460V 60HZ 1750 RPM FRAME 184T' },
      { frame: '184T', ratings: [{ hp: 5, volts: 460, hertz: 60, rpm: 1750 }] },
    ],
    [
      'a plate and columns that agree',
      { Nameplate: '5 HP 460V', RPM: '1750' },
      { ratings: [{ hp: 5, volts: 460, rpm: 1750 }] },
    ],
    ['nothing known', { HP: '-', Volts: 'n/a', RPM: '?', Amps: 'k.A.', Frame: '#N/A', Maker: 'unknown' }, {}],
  ])('%s', (_, cells, motor) => {
    const draft = readRow('motors', cells);
    expect(draft.problems).toEqual([]);
    expect(draft.motor?.motor).toEqual({ id: 'M-1', ...motor });
  });

  test.each<[string, Cells, RegExp]>([
    ['hp or kW', { Power: '7.5' }, /could be 7.5 hp or 7.5 kW/],
    ['hp and kW that do not agree', { HP: '5', kW: '7.5' }, /which one holds/],
    ['a power that came as a day', { HP: ['2026-02-01', 'date'] }, /date/],
    ['amps of two voltages that came as a day', { Amps: ['2026-06-13', 'date'] }, /date/],
    ['a frame of two systems', { Frame: '56' }, /NEMA 56.*IEC 56/],
    ['a frame that came as a day', { Frame: ['1982-04-01', 'date'] }, /format the column as text/],
    ['a serial in scientific notation', { Serial: '1.23E+05' }, /lost the digits.*format the column as text/],
    ['a serial of too many digits', { Serial: ['1234567890123456789', 'number'] }, /more than 15 digits/],
    ['a number that came as a day', { 'Motor no': '04-Dec' }, /format the column as text/],
    ['a speed above the field’s', { Hz: '60', RPM: '1850', Poles: '4' }, /synchronous speed/],
    ['104 degrees of what', { Ambient: '104' }, /°C or 104 °F/],
    ['a mass of what', { Mass: '90' }, /kg or 90 lb/],
    ['a length of what', { 'Shaft dia': '28' }, /mm or 28 in/],
    ['a day that could be two', { 'Tested on': '03/04/2026' }, /2026-04-03 or 2026-03-04/],
    ['a day as a bare number', { 'Tested on': ['45000', 'number'] }, /bare number/],
    ['30 February', { 'Tested on': '2026-02-30' }, /calendar/],
    ['a rotation from neither end', { Rotation: 'CW' }, /drive end or from the other/],
    ['washdown of which kind', { Washdown: 'yes' }, /painted or stainless/],
    ['inverter duty of which kind', { 'Inverter duty': 'yes' }, /general.*inverter/],
    ['a class mark with a loose temperature', { 'Area mark': 'Ex tb IIIC T125 Db' }, /°C/],
    ['voltages run together', { Volts: '230.460' }, /with a stroke/],
    ['frequencies run together', { Hz: '50,60' }, /50\/60/],
    ['speeds run together', { RPM: '1750,1450' }, /with a stroke/],
    ['a sign before a word', { Phases: '-3' }, /one of 1, 3/],
    ['a column too narrow', { Volts: '####' }, /too narrow/],
    ['poles told twice', { Poles: '6', Frame: '100L-4' }, /4.*6|6.*4/],
    ['poles beside the speed', { Poles: '6', RPM: '1450 (4P)' }, /4 poles/],
    ['an odd number of poles', { Poles: '5' }, /multiple of 2/],
    ['an unknown enclosure', { Encl: 'TEXQ' }, /not an enclosure/],
    ['phases that are a voltage', { Phases: '230' }, /one of 1, 3/],
    ['a thermal class that is a word', { Insulation: 'half rotten' }, /thermal class/],
    ['two plates', { Nameplate: '5 HP 460V', HP: '7.5' }, /which hold/],
    ['an efficiency above all', { Eff: '895' }, /between/],
    ['a place in a set', { Place: 'installed' }, /in a set/],
    ['a shelf for a motor away', { Place: 'at repair', Store: 'Main', Shelf: 'A1' }, /which one holds/],
  ])('%s is refused', (_, cells, says) => {
    const draft = readRow('motors', cells);
    expect(draft.problems.map((one) => `${one.value}: ${one.says}`).join('\n')).toMatch(says);
  });

  test('a motor without its number is refused', () => {
    expect(readRow('motors', { 'Motor no': '', HP: '5' }).problems).toEqual([
      { field: 'plantNumber', value: '', says: 'has no motor number: a motor is known by it' },
    ]);
  });

  test('a shelf tells where the motor is; "store / shelf" in one cell is both', () => {
    expect(readRow('motors', { Shelf: 'Main store / A1' }).motor).toEqual({
      motor: { id: 'M-1' },
      place: 'on-shelf',
      store: 'Main store',
      shelf: 'A1',
    });
  });
});

describe('decimal signs', () => {
  test.each([
    ['.', '1,450', 1450],
    [',', '1.450', 1450],
    [',', '1450,5', 1450.5],
    [null, '1,450', 1450],
  ] as const)('rpm with sign %s: %s', (decimal, cell, rpm) => {
    expect(readRow('motors', { RPM: cell }, { decimal }).motor?.motor.ratings).toEqual([{ rpm }]);
  });

  test.each([
    ['.', '1.450', /20 and 24/],
    [',', '1,450', /20 and 24/],
  ] as const)('a speed is not read by the other sign: %s, %s', (decimal, cell, says) => {
    expect(readRow('motors', { RPM: cell }, { decimal }).problems[0]?.says).toMatch(says);
  });

  test('a figure that reads differently under the two signs is a problem where the sign is not known', () => {
    expect(readRow('motors', { 'Mass (kg)': '1,450' }, { decimal: null }).problems[0]?.says).toMatch(
      /1\.45 .* or 1450/,
    );
    expect(readRow('motors', { 'Mass (kg)': '1,450' }, { decimal: ',' }).motor?.motor.massKg).toBe(1.45);
    expect(readRow('motors', { 'Mass (kg)': '1,450' }, { decimal: '.' }).motor?.motor.massKg).toBe(1450);
    expect(readRow('motors', { Amps: '1.234' }, { decimal: '.' }).motor?.motor.ratings).toEqual([{ amps: 1.234 }]);
  });

  test('a figure that the sheet’s sign makes no sense of is read by the other and said', () => {
    const draft = readRow('motors', { 'Mass (kg)': '41,5' }, { decimal: '.' });
    expect(draft.motor?.motor.massKg).toBe(41.5);
    expect(draft.notes[0]?.says).toMatch(/read as 41\.5/);
  });

  test('a number cell has a dot whatever the sheet writes elsewhere', () => {
    const draft = readRow('motors', { Amps: ['1.234', 'number'] }, { decimal: ',' });
    expect(draft.motor?.motor.ratings).toEqual([{ amps: 1.234 }]);
  });
});

describe('a set as its cells tell it', () => {
  test('set, pump, supply and motor of one row', () => {
    const draft = readRow('sets', {
      Service: 'Syrup to kettle',
      Area: 'Boiling',
      Criticality: '2',
      Mounting: 'Foot mounted',
      Pump: 'lobe pump, 3 in',
      'Pump maker': 'Quillmoor',
      MCC: 'MCC 2, way 14',
      'Supply voltage': '480',
      Starter: 'DOL',
      'Pump kW': '3.1',
      'Pump RPM': '350',
      'Drive cable (ft)': '100',
      'Haz area': 'unclassified',
      'Motor no': 'M-0412',
      Maker: 'Tessaly Dynamo',
      HP: '5',
      RPM: '1750',
      Notes: 'see drawing',
    });
    expect(draft.problems).toEqual([]);
    expect(draft.key).toBe('SK-101');
    expect(draft.set).toEqual({
      set: {
        tag: 'SK-101',
        mounting: 'foot',
        supply: { volts: 480, start: 'direct', drive: { cableM: 30.48 } },
        load: { shaftKw: 3.1, atPumpRpm: 350 },
        surroundings: { classification: null },
      },
      service: 'Syrup to kettle',
      area: 'Boiling',
      criticality: 2,
      pump: { description: 'lobe pump, 3 in', maker: 'Quillmoor' },
      supplyName: 'MCC 2, way 14',
      note: 'see drawing',
    });
    expect(draft.motor).toEqual({
      motor: { id: 'M-0412', ratings: [{ hp: 5, rpm: 1750 }] },
      maker: 'Tessaly Dynamo',
    });
  });

  test('how a motor is held tells how its set holds it, where it can be in one way only', () => {
    const foot = readRow('sets', { IM: 'IM B3' });
    expect(foot.set?.set.mounting).toBe('foot');
    expect(foot.from.mounting).toBe('im');
    expect(readRow('sets', { IM: 'IM B35' }).set?.set.mounting).toBeUndefined();
    expect(readRow('sets', { IM: 'IM B35' }, { options: { mounting: 'foot' } }).set?.set.mounting).toBe('foot');
  });

  test.each<[string, Cells, RegExp]>([
    ['an unclear criticality', { Criticality: 'A' }, /must be one of 1, 2, 3, 4/],
    ['a vertical shaft', { Orientation: 'Vertical' }, /down or shaft up/],
    ['a torque of what', { 'Max torque': '30' }, /Nm or 30 lb-ft/],
    ['a height of what', { Altitude: '200' }, /m or 200 ft/],
    ['overload limits the wrong way round', { 'OL min': '15', 'OL max': '9' }, /must not be above/],
    ['no tag', { Tag: 'n/a', HP: '5' }, /has no tag/],
    ['a tag that came as a day', { Tag: '2026-03-04' }, /format the column as text/],
  ])('%s is refused', (_, cells, says) => {
    expect(
      readRow('sets', cells)
        .problems.map((one) => one.says)
        .join('\n'),
    ).toMatch(says);
  });

  test('a tag between double quotes is taken as it stands', () => {
    expect(readRow('sets', { Tag: '"2026-03-04"' }).key).toBe('2026-03-04');
  });

  test('frames that nobody knows are kept where a person said so; a frame that could be two stays refused', () => {
    const draft = readRow('sets', { Frame: 'QX-9' }, { options: { keepUnknownWords: true } });
    expect(draft.problems).toEqual([]);
    expect(draft.motor?.motor.frame).toBe('QX-9');
    expect(draft.notes[0]?.says).toMatch(/kept as it stands/);
    expect(readRow('sets', { Frame: '56' }, { options: { keepUnknownWords: true } }).problems).toHaveLength(1);
  });
});

describe('rows that are no data', () => {
  const rows = rowsOf(
    'Tag|HP|Volts|Service',
    '||| ',
    '---|---|---|---',
    'Tag|HP|Volts|Service',
    'Total: 43|||',
    '|Boiler house||',
    'n/a|-|?|',
  );
  const { columns } = findColumns('sets', rows, new Map());
  test.each([
    [1, 'is empty'],
    [2, 'is a line drawn'],
    [3, 'is the headings again'],
    [4, 'is a total ("Total: 43")'],
    [5, 'is a heading or a remark ("Boiler house")'],
    [6, 'tells nothing'],
  ])('row %i %s', (i, skip) => {
    const draft = draftOf('sets', rows[i] as (typeof rows)[0], columns, { decimal: '.' });
    expect(draft).toMatchObject({ skip, set: null, motor: null, problems: [] });
  });

  test('a heading over the whole width is no tag', () => {
    const row = { line: 9, cells: ['BOILER HOUSE', '', '', ''], merged: true };
    expect(draftOf('sets', row, columns, { decimal: '.' }).skip).toMatch(/heading or a remark/);
  });
});
