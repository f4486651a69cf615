import type { CellType } from '@/lib/import/sheet-row';
import { AT, cellsOf, type Dice, figureIn, type Manner, pick, type Truth } from './messy-truth';

/** A row about to be spoilt: its true values, its cells, and what must come of it as far as that differs. */
export interface Row {
  t: Truth;
  cells: string[];
  types: CellType[] | null;
  isMerged: boolean;
  manner: Manner;
  d: Dice;
  /** The row before it in the sheet that is data and right. */
  before: Truth | null;
  must: Must;
}

export type Must =
  | { be: 'right' }
  | { be: 'refused'; field: string | null }
  | { be: 'passed over' }
  /** Says what an earlier row said. */
  | { be: 'the same' };

/** Each kind of mess by its name. It may change the truth, if that is what the mess says, and then the cells. */
export const KINDS: Record<string, (row: Row) => void> = {
  'as it should be': () => {},

  // Written oddly, and still one thing only.
  'blanks around and within': (r) =>
    each(r, (cell) => `  ${cell.replace(' ', '  ')} `, 'service', 'tag', 'frame', 'power'),
  'no-break spaces': (r) =>
    each(r, (cell) => `\u00A0${cell.replaceAll(' ', '\u00A0')}\u00A0`, 'service', 'power', 'maker', 'rpm'),
  'marks nobody sees': (r) => each(r, (cell) => `\uFEFF${cell}\u200B`, 'tag', 'serial', 'volts', 'frame'),
  'small letters': (r) => each(r, (cell) => cell.toLowerCase(), 'frame', 'power', 'enclosure', 'ip', 'insulation'),
  'a line break in a cell': (r) => put(r, 'service', `${r.t.service.replace(' ', '\n')}`),
  'a half as one sign': (r) => power(r, 7.5, '7½'),
  'a half as a fraction': (r) => power(r, 7.5, '7-1/2'),
  'three quarters': (r) => power(r, 0.75, '3/4'),
  'a quarter more': (r) => power(r, 1.25, '1 1/4'),
  'unit glued to the figure': (r) => put(r, 'power', (r.cells[AT.power] as string).replace(' ', '')),
  'unit in full': (r) =>
    put(r, 'power', 'hp' in r.t.power ? `${fig(r, r.t.power.hp)} horsepower` : `${fig(r, r.t.power.kw)} kilowatts`),
  'power in both units': (r) => {
    r.t.power = { hp: 5 };
    put(r, 'power', pick(r.d, ['5 HP (3,7 kW)', '5 HP / 3.7 kW', '5 hp (3.73 kW)']).replace(/[.,]/, r.manner.decimal));
  },
  'metric horsepower': (r) => {
    r.t.power = { kw: 7.355 };
    put(r, 'power', pick(r.d, ['10 PS', '10 CV', '10 ch']));
  },
  watts: (r) => {
    r.t.power = { kw: 0.37 };
    put(r, 'power', '370 W');
  },
  'the other decimal sign': (r) => {
    const other = r.manner.decimal === '.' ? ',' : '.';
    each(r, (cell) => cell.replace(r.manner.decimal, other), 'shaftKw', 'amps');
    if ('hp' in r.t.power ? r.t.power.hp % 1 !== 0 : r.t.power.kw % 1 !== 0)
      each(r, (cell) => cell.replace(r.manner.decimal, other), 'power');
  },
  'two voltages and two currents': (r) => {
    r.t.volts = r.manner.isMetric ? [400, 690] : [230, 460];
    r.t.amps = r.manner.isMetric ? [10.8, 6.2] : [13.2, 6.6];
    write(r, 'volts', 'amps');
  },
  'two voltages with dashes and blanks': (r) => {
    r.t.volts = r.manner.isMetric ? [400, 690] : [230, 460];
    r.t.amps = r.manner.isMetric ? [10.8, 6.2] : [13.2, 6.6];
    write(r, 'volts', 'amps');
    each(r, (cell) => cell.replace('/', ' / '), 'volts', 'amps');
  },
  'the sign of a fraction between voltages': (r) => {
    r.t.volts = [230, 460];
    r.t.amps = [13.2, 6.6];
    write(r, 'volts', 'amps');
    each(r, (cell) => cell.replace('/', '\u2044'), 'volts');
  },
  'volts with their unit': (r) =>
    each(r, (cell) => cell + pick(r.d, [' V', 'V', ' volts', ' VAC']), 'volts', 'supplyVolts'),
  'thousands in a speed': (r) => put(r, 'rpm', `1${r.manner.decimal === '.' ? ',' : '.'}${String(r.t.rpm).slice(1)}`),
  'a blank for thousands': (r) => put(r, 'rpm', `1 ${String(r.t.rpm).slice(1)}`),
  'a speed with its unit': (r) =>
    each(r, (cell) => cell + pick(r.d, [' rpm', 'RPM', ' min-1', ' r/min', ' U/min']), 'rpm', 'pumpRpm'),
  'poles beside the speed': (r) => put(r, 'rpm', `${r.t.rpm} (4P)`),
  'poles in words': (r) => put(r, 'poles', pick(r.d, ['4-pole', '4P', '4 poles', '4 pol'])),
  'wide figures': (r) =>
    each(
      r,
      (cell) => [...cell].map((c) => (/\d/.test(c) ? String.fromCharCode(c.charCodeAt(0) + 0xfee0) : c)).join(''),
      'rpm',
      'volts',
      'hertz',
    ),
  'hertz with their unit': (r) => put(r, 'hertz', `${r.t.hertz}${pick(r.d, [' Hz', 'HZ', ' cyc', '~'])}`),
  'amps with their unit': (r) => each(r, (cell) => `${cell} A`, 'amps'),
  'the frame in pieces': (r) =>
    put(r, 'frame', pick(r.d, [r.t.frame.replace(/(\d)([A-Z])/, '$1 $2'), `FRAME ${r.t.frame}`, `Fr. ${r.t.frame}`])),
  'poles behind the frame': (r) => {
    r.t.frame = '132S';
    put(r, 'frame', '132S-4');
  },
  'degrees Fahrenheit': (r) => put(r, 'ambientC', pick(r.d, ['104 °F', '104F', '104 ºF', '104 deg F'])),
  'degrees with their sign': (r) => put(r, 'ambientC', pick(r.d, ['40°C', '40 C', '+40 °C'])),
  pounds: (r) => {
    r.t.massKg = 40.82;
    put(r, 'massKg', pick(r.d, ['90 lb', '90 LBS', '90 lbs.']));
  },
  'an IP code in another dress': (r) =>
    put(r, 'ip', pick(r.d, [r.t.ip.slice(2), `IP ${r.t.ip.slice(2)}`, r.t.ip.toLowerCase(), `IP-${r.t.ip.slice(2)}`])),
  'an enclosure with dots': (r) => put(r, 'enclosure', [...r.t.enclosure].join('.')),
  'a class with its word': (r) => put(r, 'insulation', `${pick(r.d, ['Class', 'CL', 'cl.'])} ${r.t.insulation}`),
  'a class by its temperature': (r) => {
    r.t.insulation = 'F';
    put(r, 'insulation', pick(r.d, ['155(F)', '155', '155 F']));
  },
  'how it is held in other words': (r) => {
    const words = {
      foot: ['Feet', 'Foot mounted', 'Base'],
      face: ['Flange', 'C-face', 'face mounted'],
      'foot-and-face': ['Foot & flange', 'foot/face', 'Feet and flange'],
    };
    put(r, 'mounting', pick(r.d, words[r.t.mounting]));
  },
  'shaft power in horsepower': (r) => {
    r.t.shaftKw = 2.2371;
    put(r, 'shaftKw', '3 hp');
  },
  'a day with dots': (r) => put(r, 'testedOn', r.t.testedOn.split('-').reverse().join('.')),
  'a day with slashes that can be one only': (r) => put(r, 'testedOn', r.t.testedOn.split('-').reverse().join('/')),
  'an American day that can be one only': (r) => {
    const [y, m, d] = r.t.testedOn.split('-');
    put(r, 'testedOn', `${m}/${d}/${y}`);
  },
  'a month in letters': (r) => {
    const [y, m, d] = r.t.testedOn.split('-');
    const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
    put(r, 'testedOn', `${d}-${months[Number(m) - 1]}-${y}`);
  },
  'a cell that is a day': (r) => typed(r, 'testedOn', `${r.t.testedOn}T00:00:00`, 'date'),
  'number cells with noise': (r) => {
    r.t.shaftKw = 3.7;
    r.t.amps = [8.2];
    typed(r, 'shaftKw', '3.7000000000000002', 'number');
    typed(r, 'amps', '8.1999999999999993', 'number');
    typed(r, 'rpm', String(r.t.rpm), 'number');
  },
  'the spreadsheet’s sign for text': (r) => each(r, (cell) => `'${cell}`, 'serial', 'tag'),
  'noughts before a serial': (r) => {
    r.t.serial = `000${Math.floor(r.d() * 10_000)}`;
    typed(r, 'serial', r.t.serial, 'text');
  },
  'a bare figure as a serial': (r) => {
    r.t.serial = String(100_000 + Math.floor(r.d() * 800_000));
    typed(r, 'serial', r.t.serial, 'number');
  },
  'words for not known': (r) => {
    for (const key of [
      'enclosure',
      'ip',
      'insulation',
      'serial',
      'note',
      'massKg',
      'testedOn',
      'serviceFactor',
    ] as const) {
      put(r, key, pick(r.d, ['-', 'n/a', '?', 'unknown', 'TBD', 'k.A.', '—', 'N.A.', '#N/A', '']));
      delete (r.t as Partial<Truth>)[key];
    }
  },
  'faults of formulas': (r) => {
    typed(r, 'massKg', '#REF!', 'error');
    typed(r, 'ip', '#N/A', 'error');
    delete (r.t as Partial<Truth>).massKg;
    delete (r.t as Partial<Truth>).ip;
  },
  'cells missing at the end': (r) => {
    r.cells.length = AT.ambientC;
    for (const key of ['ambientC', 'massKg', 'testedOn', 'note'] as const) delete (r.t as Partial<Truth>)[key];
  },
  'a remark beyond the last column': (r) => void r.cells.push('', 'ask the electricians'),

  // Rows that are none.
  'an empty row': (r) => only(r, ''),
  'a line drawn': (r) => {
    r.cells = r.cells.map(() => pick(r.d, ['---', '===', '-----']));
    r.must = { be: 'passed over' };
  },
  'the headings again': (r) => {
    r.cells = [...r.manner.headings];
    r.must = { be: 'passed over' };
  },
  'a total': (r) => {
    only(r, pick(r.d, ['Total', 'TOTAL:', 'Total: 43', 'Summe', 'Subtotal']));
    r.cells[AT.shaftKw] = '412';
  },
  'a heading over the width': (r) => {
    only(r, pick(r.d, ['BOILING HOUSE', 'Level 2', 'Effluent']));
    r.isMerged = true;
  },
  'a remark in one cell': (r) => {
    only(r, '');
    r.cells[AT.service] = 'all motors below are on the new switchboard';
  },

  // Said twice.
  'the row again': (r) => {
    if (!r.before) return;
    r.cells = cellsOf(r.before, r.manner);
    r.must = { be: 'the same' };
  },
  'the row again in other letters': (r) => {
    if (!r.before) return;
    r.cells = cellsOf(r.before, r.manner);
    each(r, (cell) => ` ${cell.toLowerCase()}`, 'tag', 'service', 'maker', 'power');
    r.must = { be: 'the same' };
  },
  'the tag again with another motor': (r) => {
    if (!r.before) return;
    put(r, 'tag', r.before.tag);
    refuse(r, 'tag');
  },
  'the motor again under another tag': (r) => {
    if (!r.before) return;
    put(r, 'number', r.before.number);
    refuse(r, 'plantNumber');
  },

  // What could be two things, or nothing.
  'power without a unit': refusedFor('power', (r) => put(r, 'power', fig(r, 7.5))),
  'powers that do not agree': refusedFor('power', (r) => put(r, 'power', '5 HP / 7 kW')),
  'power in words': refusedFor('power', (r) => put(r, 'power', 'about five')),
  'power that came as a day': refusedFor('power', (r) => typed(r, 'power', '2026-02-01', 'date')),
  'currents that came as a day': refusedFor('amps', (r) => typed(r, 'amps', '2026-06-13', 'date')),
  'a frame that came as a day': refusedFor('frame', (r) => typed(r, 'frame', '1982-04-01', 'date')),
  'a frame of two systems': refusedFor('frame', (r) => put(r, 'frame', '56')),
  'two frames in a cell': refusedFor('frame', (r) => put(r, 'frame', '182T or 213T')),
  'a frame nobody knows': refusedFor('frame', (r) => put(r, 'frame', '1B4T')),
  'a tag that came as a day': refusedFor('tag', (r) => put(r, 'tag', '04-Dec')),
  'a tag in scientific notation': refusedFor('tag', (r) => put(r, 'tag', '1.01E+05')),
  'a serial in scientific notation': refusedFor('serial', (r) => put(r, 'serial', fig(r, 1.23).concat('E+11'))),
  'a serial that lost digits': refusedFor('serial', (r) => typed(r, 'serial', '12345678901234567000', 'number')),
  'no tag': refusedFor('tag', (r) => put(r, 'tag', pick(r.d, ['', '?', 'n/a']))),
  'degrees of what': refusedFor('ambientC', (r) => put(r, 'ambientC', '104')),
  'a mass of what': refusedFor('massKg', (r) => put(r, 'massKg', '90')),
  'a day that could be two': refusedFor('testedOn', (r) => put(r, 'testedOn', '03/04/2024')),
  'a day that is none': refusedFor('testedOn', (r) => put(r, 'testedOn', '31.02.2024')),
  'a day without its day': refusedFor('testedOn', (r) => put(r, 'testedOn', 'spring 2024')),
  'a day as a bare number': refusedFor('testedOn', (r) => typed(r, 'testedOn', '45231', 'number')),
  'an O for a nought': refusedFor('rpm', (r) => put(r, 'rpm', '175O')),
  'a speed above the field': refusedFor('rpm', (r) => put(r, 'rpm', '1850')),
  'a speed below nought': refusedFor('rpm', (r) => put(r, 'rpm', '-1750')),
  'a speed with a decimal sign': refusedFor('rpm', (r) => put(r, 'rpm', `1${r.manner.decimal}750`)),
  'poles that contradict': refusedFor('rpm', (r) => {
    put(r, 'poles', '6');
    put(r, 'rpm', '1450 (4P)');
  }),
  'an odd number of poles': refusedFor('poles', (r) => put(r, 'poles', '5')),
  'volts in words': refusedFor('volts', (r) => put(r, 'volts', 'see plate')),
  'voltages run together': refusedFor('volts', (r) => put(r, 'volts', '230.460')),
  'one voltage and two currents': refusedFor('amps', (r) => put(r, 'amps', '13/6')),
  'a range of currents': refusedFor('amps', (r) => put(r, 'amps', '14-13')),
  'a column too narrow': refusedFor('volts', (r) => put(r, 'volts', '#####')),
  'an enclosure nobody knows': refusedFor('enclosure', (r) => put(r, 'enclosure', 'TEQC')),
  'half an IP code': refusedFor('ip', (r) => put(r, 'ip', 'IP5')),
  'two IP codes': refusedFor('ip', (r) => put(r, 'ip', 'IP55/65')),
  'a class that is a word': refusedFor('insulation', (r) => put(r, 'insulation', 'good')),
  'criticality in letters': refusedFor('criticality', (r) => put(r, 'criticality', 'B')),
  'held in a way nobody knows': refusedFor('mounting', (r) => put(r, 'mounting', 'vertical')),
  'a service factor below one': refusedFor('serviceFactor', (r) => put(r, 'serviceFactor', fig(r, 0.85))),
  'a unit of something else': refusedFor('shaftKw', (r) => put(r, 'shaftKw', `${fig(r, 3.1)} bar`)),
  'a cell that swallowed a page': refusedFor('service', (r) => put(r, 'service', 'x'.repeat(9_000))),
  'columns shifted by one': (r) => {
    r.cells.splice(AT.frame, 0, 'spare key');
    r.cells.length = r.manner.headings.length;
    refuse(r, 'frame');
  },
};

/** Spoilt so that the row has to be refused for that field. */
function refusedFor(field: string, spoil: (row: Row) => void) {
  return (row: Row) => {
    spoil(row);
    refuse(row, field);
  };
}

const fig = ({ manner }: Row, value: number): string => figureIn(manner, value);

function put(r: Row, key: keyof Truth, text: string): void {
  r.cells[AT[key]] = text;
}
function typed(r: Row, key: keyof Truth, text: string, type: CellType): void {
  put(r, key, text);
  r.types ??= r.cells.map(() => 'text');
  r.types[AT[key]] = type;
}
function each(r: Row, spoil: (cell: string) => string, ...keys: (keyof Truth)[]): void {
  for (const key of keys) put(r, key, spoil(r.cells[AT[key]] as string));
}
function write(r: Row, ...keys: (keyof Truth)[]): void {
  const clean = cellsOf(r.t, r.manner);
  for (const key of keys) put(r, key, clean[AT[key]] as string);
}
function power(r: Row, value: number, text: string): void {
  r.t.power = r.manner.isMetric ? { kw: value } : { hp: value };
  put(r, 'power', `${text} ${r.manner.isMetric ? 'kW' : 'HP'}`);
}
function only(r: Row, first: string): void {
  r.cells = r.cells.map((_, i) => (i === 0 ? first : ''));
  r.must = { be: 'passed over' };
}
function refuse(r: Row, field: string): void {
  r.must = { be: 'refused', field };
}
