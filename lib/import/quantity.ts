/**
 * What a figure measures: the units people write and how many of the kept unit (the first) one of them is. `bare` says
 * what a figure without any unit could be; null where everybody means the kept unit.
 */
export const QUANTITIES = {
  length: quantity({ mm: 1, cm: 10, m: 1_000, in: 25.4, ft: 304.8 }, { min: 0.001, max: 100_000 }, ['mm', 'in']),
  distance: quantity({ m: 1, ft: 0.3048, km: 1_000 }, { min: 0, max: 100_000 }, ['m', 'ft']),
  mass: quantity({ kg: 1, lb: 0.45359237, t: 1_000 }, { min: 0.05, max: 100_000 }, ['kg', 'lb']),
  power: quantity({ kw: 1, hp: 0.745699871582, w: 0.001, ps: 0.73549875 }, { min: 0.001, max: 20_000 }, ['kW', 'hp']),
  hp: quantity({ hp: 1 }, { min: 0.001, max: 20_000 }),
  kw: quantity({ kw: 1, w: 0.001 }, { min: 0.001, max: 15_000 }),
  torque: quantity({ nm: 1, lbft: 1.3558179483314 }, { min: 0.01, max: 1_000_000 }, ['Nm', 'lb-ft']),
  temperature: quantity({ c: 1, f: 1 }, { min: -60, max: 250 }),
  volts: quantity({ v: 1, kv: 1_000 }, { min: 5, max: 15_000 }),
  amps: quantity({ a: 1, ka: 1_000 }, { min: 0.01, max: 100_000 }),
  hertz: quantity({ hz: 1 }, { min: 0.1, max: 400 }),
  rpm: quantity({ rpm: 1 }, { min: 1, max: 30_000 }),
  percent: quantity({ '%': 1 }, { min: 0, max: 1_000 }),
  megohms: quantity({ mohm: 1, gohm: 1_000, kohm: 0.001 }, { min: 0, max: 1_000_000 }),
  kvar: quantity({ kvar: 1 }, { min: 0, max: 10_000 }),
  poles: quantity({ p: 1 }, { min: 2, max: 64 }),
  ratio: quantity({ ':1': 1 }, { min: 0.001, max: 10_000 }),
  number: quantity({}, { min: 0, max: 1_000_000 }),
} as const;

export type Quantity = keyof typeof QUANTITIES;

export interface QuantityOf {
  units: Readonly<Record<string, number>>;
  /** What the figure can be at all, to decide between two readings of its sign. */
  bounds: { min: number; max: number };
  bare: readonly [string, string] | null;
}

function quantity(
  units: QuantityOf['units'],
  bounds: QuantityOf['bounds'],
  bare: QuantityOf['bare'] = null,
): QuantityOf {
  return { units, bounds, bare };
}

/** A unit as people write it, in our spelling; null for any other word. The standard a frame is of counts as its unit. */
export function unitOf(written: string): string | null {
  if (written.length > 14) return null;
  const word = written.toLowerCase().replaceAll(/[\s.·*°º_-]/g, '');
  return UNIT_WORDS.get(word) ?? null;
}

const UNIT_WORDS = new Map<string, string>(
  Object.entries({
    mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
    cm: ['cm'],
    m: ['m', 'metre', 'metres', 'meter', 'meters'],
    km: ['km'],
    in: ['in', 'inch', 'inches', '"', '″', '”', "''", 'zoll', 'pouces', 'pulgadas'],
    ft: ['ft', 'feet', "'"],
    kg: ['kg', 'kgs', 'kilograms'],
    lb: ['lb', 'lbs', 'pounds'],
    t: ['t', 'tonnes'],
    kw: ['kw', 'kilowatt', 'kilowatts'],
    hp: ['hp', 'horsepower', 'bhp'],
    w: ['w', 'watt', 'watts'],
    ps: ['ps', 'cv', 'ch'],
    nm: ['nm'],
    lbft: ['lbft', 'ftlb', 'ftlbs', 'lbfft'],
    c: ['c', 'degc', 'celsius'],
    f: ['f', 'degf', 'fahrenheit'],
    v: ['v', 'volt', 'volts', 'vac'],
    kv: ['kv'],
    a: ['a', 'amp', 'amps', 'ampere', 'amperes'],
    ka: ['ka'],
    hz: ['hz', 'hertz', 'cycles', 'cps'],
    rpm: ['rpm', 'r/min', '1/min', 'min1', 'min^1', 'min⁻¹', 'u/min', 'tr/min', '/min', 'rev/min'],
    '%': ['%', 'percent', 'pct'],
    mohm: ['mohm', 'mohms', 'megohm', 'megohms', 'mω', 'megaohm', 'megaohms'],
    gohm: ['gohm', 'gω'],
    kohm: ['kohm', 'kω'],
    kvar: ['kvar'],
    p: ['p', 'pole', 'poles', 'pol', 'polig'],
    ':1': [':1', 'to1'],
    nema: ['nema'],
    iec: ['iec'],
  }).flatMap(([unit, words]) => words.map((word): [string, string] => [word, unit])),
);
