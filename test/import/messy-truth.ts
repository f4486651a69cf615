/** What a row of the messy sheet is about, before anybody spoils it. All names are invented. */
export interface Truth {
  tag: string;
  area: string;
  service: string;
  criticality: number;
  mounting: 'foot' | 'face' | 'foot-and-face';
  pump: string;
  pumpMaker: string;
  supplyVolts: number;
  shaftKw: number;
  pumpRpm: number;
  number: string;
  maker: string;
  serial: string;
  frame: string;
  power: { hp: number } | { kw: number };
  volts: number[];
  hertz: 50 | 60;
  rpm: number;
  amps: number[];
  poles: number;
  serviceFactor: number;
  enclosure: string;
  ip: string;
  insulation: string;
  ambientC: number;
  massKg: number;
  testedOn: string;
  note: string;
}

/** How a people writes: the sign before decimals, the frames and units of its motors, its headings. */
export interface Manner {
  decimal: '.' | ',';
  headings: readonly string[];
  isMetric: boolean;
}

export const AMERICAN: Manner = {
  decimal: '.',
  isMetric: false,
  headings: [
    ...['Tag No.', 'Area', 'Service', 'Crit.', 'Mounting', 'Pump', 'Pump Mfr', 'Supply Voltage', 'Pump kW', 'Pump RPM'],
    ...['Motor No.', 'Manufacturer', 'Serial #', 'Frame', 'Power', 'Volts', 'Hz', 'RPM', 'FLA', 'Poles', 'SF', 'Encl.'],
    ...['IP', 'Ins. Class', 'Ambient', 'Weight', 'Date tested', 'Remarks'],
  ],
};

export const GERMAN: Manner = {
  decimal: ',',
  isMetric: true,
  headings: [
    ...['Kennzeichen', 'Bereich', 'Beschreibung', 'Kritikalität', 'Befestigung', 'Pumpe', 'Pumpenhersteller'],
    ...[
      'Netzspannung',
      'Pump kW',
      'Pumpendrehzahl',
      'Motornummer',
      'Hersteller',
      'Seriennummer',
      'Baugröße',
      'Leistung',
    ],
    ...[
      'Spannung',
      'Frequenz',
      'Drehzahl',
      'Strom',
      'Polzahl',
      'Betriebsfaktor',
      'Gehäuse',
      'Schutzart',
      'Wärmeklasse',
    ],
    ...['Umgebungstemperatur', 'Gewicht', 'Prüfdatum', 'Bemerkung'],
  ],
};

/** The places of the columns, in the order of both lists of headings. */
export const AT = {
  ...{ tag: 0, area: 1, service: 2, criticality: 3, mounting: 4, pump: 5, pumpMaker: 6, supplyVolts: 7, shaftKw: 8 },
  ...{ pumpRpm: 9, number: 10, maker: 11, serial: 12, frame: 13, power: 14, volts: 15, hertz: 16, rpm: 17, amps: 18 },
  ...{
    poles: 19,
    serviceFactor: 20,
    enclosure: 21,
    ip: 22,
    insulation: 23,
    ambientC: 24,
    massKg: 25,
    testedOn: 26,
    note: 27,
  },
} as const satisfies Record<keyof Truth, number>;

export type Dice = () => number;

/** The same throws for the same seed: a linear congruential generator with the constants of Numerical Recipes. */
export function dice(seed: number): Dice {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
export const pick = <T>(throwOf: Dice, list: readonly T[]): T => list[Math.floor(throwOf() * list.length)] as T;

const AMERICAN_SIZES = [
  { frame: '143T', power: { hp: 1 }, rpm: 1745, amps: 2.9, massKg: 19 },
  { frame: '145T', power: { hp: 1.5 }, rpm: 1745, amps: 4.2, massKg: 22 },
  { frame: '184TC', power: { hp: 5 }, rpm: 1750, amps: 13.2, massKg: 43 },
  { frame: '213T', power: { hp: 7.5 }, rpm: 1765, amps: 19.6, massKg: 66 },
  { frame: '215TC', power: { hp: 10 }, rpm: 1765, amps: 25.8, massKg: 77 },
] as const;
const GERMAN_SIZES = [
  { frame: '90L', power: { kw: 1.5 }, rpm: 1435, amps: 3.4, massKg: 24.5 },
  { frame: '112M', power: { kw: 4 }, rpm: 1450, amps: 8.2, massKg: 38.5 },
  { frame: '132S', power: { kw: 5.5 }, rpm: 1455, amps: 10.8, massKg: 61.5 },
  { frame: '160M', power: { kw: 11 }, rpm: 1465, amps: 20.9, massKg: 112.5 },
] as const;

export function truthOf(n: number, { isMetric }: Manner, d: Dice): Truth {
  const size = isMetric ? pick(d, GERMAN_SIZES) : pick(d, AMERICAN_SIZES);
  const pad = (value: number, digits: number) => String(value).padStart(digits, '0');
  return {
    tag: `${pick(d, ['SK', 'WB', 'EF', 'CP'])}-${1000 + n}`,
    area: pick(d, ['Boiling', 'Bottling', 'Effluent', 'Mill']),
    service: pick(d, ['Syrup to kettle', 'Wort transfer', 'Caustic return', 'Sludge feed']),
    criticality: 1 + Math.floor(d() * 4),
    mounting: pick(d, ['foot', 'face', 'foot-and-face']),
    pump: pick(d, ['lobe pump', 'gear pump', 'centrifugal pump']),
    pumpMaker: pick(d, ['Quillmoor', 'Haldengrave']),
    supplyVolts: isMetric ? 400 : 480,
    shaftKw: pick(d, [0.6, 2.4, 3.1, 4.4]),
    pumpRpm: pick(d, [350, 420, 610]),
    number: `M-${pad(n, 5)}`,
    maker: pick(d, ['Tessaly Dynamo', 'Brackenholm', 'Orrinshaw Electric']),
    serial: `${pick(d, ['B', 'K', 'T'])}${pad(Math.floor(d() * 1e6), 6)}`,
    ...{ frame: size.frame, power: size.power, rpm: size.rpm, amps: [size.amps], massKg: size.massKg },
    volts: [isMetric ? 400 : 230],
    hertz: isMetric ? 50 : 60,
    poles: 4,
    serviceFactor: isMetric ? 1 : 1.15,
    enclosure: pick(d, ['TEFC', 'TENV', 'ODP']),
    ip: pick(d, ['IP55', 'IP54', 'IP56']),
    insulation: pick(d, ['F', 'B', 'H']),
    ambientC: 40,
    testedOn: `20${15 + Math.floor(d() * 11)}-${pad(1 + Math.floor(d() * 12), 2)}-${pad(13 + Math.floor(d() * 15), 2)}`,
    note: pick(d, ['shares a base with its stand-by', 'drain plug seized']),
  };
}

/** The cells of a row that nobody spoilt. */
export function cellsOf(t: Truth, manner: Manner): string[] {
  const figure = (value: number) => figureIn(manner, value);
  const cells: Record<keyof Truth, string> = {
    ...{ tag: t.tag, area: t.area, service: t.service, criticality: String(t.criticality), mounting: t.mounting },
    ...{ pump: t.pump, pumpMaker: t.pumpMaker, supplyVolts: String(t.supplyVolts), shaftKw: figure(t.shaftKw) },
    ...{ pumpRpm: String(t.pumpRpm), number: t.number, maker: t.maker, serial: t.serial, frame: t.frame },
    power: 'hp' in t.power ? `${figure(t.power.hp)} HP` : `${figure(t.power.kw)} kW`,
    ...{ volts: t.volts.join('/'), hertz: String(t.hertz), rpm: String(t.rpm), amps: t.amps.map(figure).join('/') },
    ...{ poles: String(t.poles), serviceFactor: figure(t.serviceFactor), enclosure: t.enclosure, ip: t.ip },
    ...{ insulation: t.insulation, ambientC: String(t.ambientC), massKg: `${figure(t.massKg)} kg` },
    ...{ testedOn: t.testedOn, note: t.note },
  };
  return (Object.keys(AT) as (keyof Truth)[]).map((key) => cells[key]);
}

export const figureIn = ({ decimal }: Manner, value: number): string => String(value).replace('.', decimal);

/** What must come of a row: each value at its place in the records of the set and the motor. */
export function leavesOf(t: Truth): Record<string, unknown> {
  const ratings = t.volts.flatMap((volts, i) =>
    Object.entries({ volts, hertz: t.hertz, ...t.power, rpm: t.rpm, amps: t.amps[i] }).map(
      ([key, value]): [string, unknown] => [`motor.ratings.${i}.${key}`, value],
    ),
  );
  return {
    ...{ 'set.tag': t.tag, 'set.area': t.area, 'set.service': t.service, 'set.criticality': t.criticality },
    ...{ 'set.mounting': t.mounting, 'set.pump.description': t.pump, 'set.pump.maker': t.pumpMaker },
    ...{ 'set.supply.volts': t.supplyVolts, 'set.load.shaftKw': t.shaftKw, 'set.load.atPumpRpm': t.pumpRpm },
    ...{ 'set.note': t.note, 'motor.id': t.number, 'motor.maker': t.maker, 'motor.serial': t.serial },
    ...{ 'motor.frame': t.frame, 'motor.poles': t.poles, 'motor.serviceFactor': t.serviceFactor },
    ...{ 'motor.enclosure': t.enclosure, 'motor.ip': t.ip, 'motor.insulation': t.insulation },
    ...{ 'motor.ambientC': t.ambientC, 'motor.massKg': t.massKg, 'motor.spare.testedOn': t.testedOn },
    ...Object.fromEntries(ratings),
  };
}
