/**
 * Writes lib/standards/tables/*.ts from a folder of transcribed standards.
 *
 *     node scripts/make-tables.mjs REFERENCE_DIR
 *
 * REFERENCE_DIR holds nema/*.json and iec/*.json. Figures are carried over as printed, each with the number of texts it
 * was read in and their codes; nothing is converted, rounded or worked out. Running it twice writes the same bytes.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const [reference] = process.argv.slice(2);
if (!reference) {
  console.error('REFERENCE_DIR: tell the folder that holds nema/ and iec/');
  process.exit(2);
}
const out = path.join(import.meta.dirname, '..', 'lib', 'standards', 'tables');
mkdirSync(out, { recursive: true });

const TEXTS = { memory: 0, published: 1, 'published-2': 2 };
const NEMA_2016 = 'MG 1-2016; U and pre-1952 frames from superseded editions';

const readReference = (name) => JSON.parse(readFileSync(path.join(reference, name), 'utf8'));
const sourcesOf = (row) => (row.src ?? []).join(' ');
const cell = (value) => {
  if (value === undefined) return undefined;
  const printed = value.v !== null && typeof value.v === 'object' ? [value.v.max, value.v.min] : value.v;
  return [printed, TEXTS[value.status], sourcesOf(value)];
};
const told = (row) => Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined));

/** Value notes, each once, with the cells they belong to; those that speak of other files are left out. */
function notesOf(values) {
  const notes = new Map();
  for (const [where, value] of values) {
    if (!value?.note || value.note.includes('.json')) continue;
    notes.set(value.note, [...(notes.get(value.note) ?? []), where]);
  }
  return [...notes].map(([note, where]) => `${where.join(', ')}: ${note}`);
}

function write(name, { rowType, header, edition, clause, unit, columns, rows, notes = [] }) {
  const body = rows.map((row) => `    ${JSON.stringify(row)},`).join('\n');
  const used = new Set([...body.matchAll(/\b[SCKMEJDOW]\d{1,2}\b/g)].map(([code]) => code));
  const texts = Object.fromEntries(
    Object.entries(header.sources)
      .filter(([code]) => used.has(code))
      .map(([code, { what, where }]) => [code, `${what} (${where})`]),
  );
  const source = { standard: header.standard, edition, clause, texts };
  const constant = name.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());
  const type = `${constant[0].toUpperCase()}${constant.slice(1)}Row`;
  const imports = ['Cell', 'Limits', 'Table'].filter((one) => one === 'Table' || rowType.includes(one));
  writeFileSync(
    path.join(out, `${name}.ts`),
    [
      '// Written by scripts/make-tables.mjs: figures as printed, never converted or rounded. Do not edit by hand.',
      `import type { ${imports.join(', ')} } from '../table';`,
      '',
      `export interface ${type} {`,
      ...rowType.split('\n').map((line) => `  ${line.trim()}`),
      '}',
      '',
      `export const ${constant}: Table<${type}> = {`,
      `  source: ${JSON.stringify(source, null, 2).replaceAll('\n', '\n  ')},`,
      `  unit: ${JSON.stringify(unit)},`,
      `  columns: ${JSON.stringify(columns, null, 2).replaceAll('\n', '\n  ')},`,
      '  rows: [',
      body,
      '  ],',
      `  notes: ${JSON.stringify(notes, null, 2).replaceAll('\n', '\n  ')},`,
      '};',
      '',
    ].join('\n'),
  );
}

const foot = readReference('nema/frames-foot.json');
write('nema-foot-frames', {
  header: foot.header,
  edition: NEMA_2016,
  clause: '4.4.1',
  unit: 'inch',
  rowType: `frame: string;
    generation: 'small' | 'T' | 'U' | 'original';
    isShort: boolean;
    D: Cell;
    E: Cell;
    twoF: Cell;
    twoFAlso?: number;
    BA: Cell;
    H: Cell;
    isSlot: boolean;
    U: Cell;
    NW: Cell;
    S: Cell<number | 'flat'>;`,
  columns: {
    frame: 'frame',
    generation: 'small: fractional; T: since 1964; U: 1952 series; original: before 1952',
    isShort: 'short shaft',
    D: 'shaft centreline above the bottom of the feet',
    E: 'half of the foot-hole spacing across',
    twoF: 'foot-hole spacing along the shaft',
    twoFAlso: 'a second spacing along, on the same base',
    BA: 'shaft shoulder to the nearest foot holes',
    H: 'foot hole diameter or slot width',
    isSlot: 'H is a slot',
    U: 'shaft diameter',
    NW: 'shaft length from the shoulder (N-W)',
    S: 'keyseat width; flat: a flat and no key',
  },
  rows: foot.frames.map(({ frame, generation, shaft, values: v }) =>
    told({
      frame,
      generation,
      isShort: shaft === 'short',
      D: cell(v.D),
      E: cell(v.E),
      twoF: cell(v['2F']),
      twoFAlso: v['2F'].alternate,
      BA: cell(v.BA),
      H: cell(v.H),
      isSlot: v.H.kind === 'slot',
      U: cell(v.U),
      NW: cell(v['N-W']),
      S: cell(v.S),
    }),
  ),
  notes: [foot.header.note],
});

const faces = readReference('nema/faces.json');
const faceRow = (kind, shaft) => (row) => {
  const v = row.values;
  return told({
    frame: row.frame,
    kind: kind ?? (row.frame.endsWith('CH') ? 'CH' : row.face),
    shaft,
    AJ: cell(v.AJ),
    AK: cell(v.AK),
    BA: cell(v.BA),
    BC: cell(v.BC),
    BD: cell(v.BD),
    holes: cell(v.BF.count),
    thread: cell(v.BF.thread),
    clearance: cell(v.BF.clearance_diameter),
    U: cell(v.U),
    AH: cell(v.AH),
    S: cell(v.S),
  });
};
write('nema-faces', {
  header: faces.header,
  edition: NEMA_2016,
  clause: '4.4.4 (C), 4.4.6 (D), tables 18-28 (solid shaft P), 18-30 (hollow shaft P), 18-33 and 18-34 (JM, JP)',
  unit: 'inch; threads UNC size-pitch',
  rowType: `frame: string;
    kind: 'C' | 'CH' | 'D' | 'JM' | 'JP' | 'P';
    shaft?: 'solid-vertical' | 'hollow';
    AJ: Cell;
    AK: Cell<number | Limits>;
    BA?: Cell;
    BC?: Cell;
    BD?: Cell;
    holes?: Cell;
    thread?: Cell<string>;
    clearance?: Cell;
    U?: Cell<number | Limits>;
    AH?: Cell<number | Limits>;
    S?: Cell<number | Limits | 'flat'>;`,
  columns: {
    frame: 'frame with its face letters',
    kind: 'face; C faces have tapped holes, D and P clearance holes',
    shaft: 'shaft of a vertical P base',
    AJ: 'bolt circle diameter',
    AK: 'rabbet diameter; two figures are limits, greatest first',
    BA: 'shaft shoulder to the nearest foot holes, where the motor also has feet',
    BC: 'shoulder to face; negative when the face lies behind the shoulder',
    BD: 'outside diameter of the face',
    holes: 'number of holes',
    thread: 'thread of the holes',
    clearance: 'diameter of the holes',
    U: 'shaft diameter',
    AH: 'shaft length from the face',
    S: 'keyseat width',
  },
  rows: [
    ...faces.C.filter(({ frame }) => !frame.includes(' ')).map(faceRow()),
    ...faces.D.map(faceRow('D')),
    ...faces.close_coupled_pump.map(faceRow()),
    ...faces.P_solid_shaft_VP.map(faceRow('P', 'solid-vertical')),
    ...faces.P_hollow_shaft.map(faceRow('P', 'hollow')),
  ],
  notes: [
    'For D, E, 2F and H of a C or D motor with feet see the foot frames of the same number.',
    'BD of the U-era C faces is approximate in the chart it was read in; the spelling of their suffix is from memory.',
    'Faces of the opposite end (FC, FD) and of the 500 series are not carried.',
  ],
});

const suffixes = readReference('nema/suffixes.json');
write('nema-two-f', {
  header: suffixes.header,
  edition: 'MG 1-2016',
  clause: '4.2.1, Table 4-2',
  unit: 'inch',
  rowType: `series: number;
    D: Cell;
    twoF: Readonly<Record<string, Cell>>;`,
  columns: {
    series: 'first two digits of the frame number, times ten',
    D: 'shaft centreline above the bottom of the feet',
    twoF: 'foot-hole spacing along the shaft, by the digits after the first two',
  },
  rows: suffixes.two_F_table.map((row) => ({
    series: row.series,
    D: [row.D, TEXTS[row.D_status], ''],
    twoF: Object.fromEntries(Object.entries(row.two_F_by_digits).map(([digits, value]) => [digits, cell(value)])),
  })),
  notes: ['For frames that the table of foot frames does not list.'],
});
const tolerances = readReference('nema/tolerances.json');
write('nema-tolerances', {
  header: tolerances.header,
  edition: 'MG 1-2016',
  clause: '4.4.1, 4.9, 4.12, 4.13',
  unit: 'inch',
  rowType: `item: string;
    appliesTo: string;
    limits: Cell<readonly [plus: number, minus: number]>;
    clause: string;`,
  columns: {
    item: 'dimension',
    appliesTo: 'frames or sizes',
    limits: 'distances above and below nominal',
    clause: 'clause',
  },
  rows: tolerances.tolerances
    .filter(({ limits }) => typeof limits.plus === 'number')
    .map((row) => ({
      item: row.item,
      appliesTo: row.applies_to,
      limits: [[row.limits.plus, row.limits.minus], TEXTS[row.status], sourcesOf(row)],
      clause: row.clause,
    })),
  notes: ['No tolerance is set for D of resilient-mounted motors.'],
});

const nemaOutputs = readReference('nema/frame-assignments.json');
write('nema-outputs', {
  header: nemaOutputs.header,
  edition: 'MG 1-2016',
  clause: 'Part 13',
  unit: 'hp, rpm (synchronous at 60 Hz)',
  rowType: `hp: number;
    rpm: number;
    enclosure: 'ODP' | 'TEFC';
    frame: Cell<string>;
    enclosureTexts: 0 | 1 | 2;
    beltFrame?: Cell<string>;`,
  columns: {
    hp: 'rated power',
    rpm: 'synchronous speed',
    enclosure: 'open (ODP) or totally enclosed fan-cooled (TEFC)',
    frame: 'T frame; a short shaft (S) is for direct connection only',
    enclosureTexts: 'texts that tell the enclosures apart, or that print one frame for both',
    beltFrame: 'long-shaft frame for a belt',
  },
  rows: nemaOutputs.T.map((row) =>
    told({
      hp: row.hp,
      rpm: row.rpm,
      enclosure: row.enclosure,
      frame: [row.frame, TEXTS[row.status], sourcesOf(row)],
      enclosureTexts: TEXTS[row.enclosure_status ?? row.status],
      beltFrame: row.belt_frame
        ? [row.belt_frame, TEXTS[row.belt_frame_status ?? 'memory'], (row.belt_frame_src ?? []).join(' ')]
        : undefined,
    }),
  ),
  notes: ['Ratings of 125 hp and up are of low confidence. The 1952 and earlier assignments are not carried.'],
});

const iecFoot = readReference('iec/frames-foot.json');
const shaftOf = (poles, s) => ({ poles, D: cell(s.D), E: cell(s.E), F: cell(s.F), fit: cell(s.fit) });
const POLES = [
  ['all_poles', 'all'],
  ['poles_2', '2'],
  ['poles_4_up', '4 and more'],
];
write('iec-foot-frames', {
  header: iecFoot.header,
  edition: 'IEC 60072-1:1991 and 2022, EN 50347:2001',
  clause: 'IEC 60072-1 Tables 1 and 4, EN 50347 Tables 1 to 3 (clause numbers from memory)',
  unit: 'mm',
  rowType: `frame: string;
    height: number;
    length: 'S' | 'M' | 'L' | null;
    isUsual: boolean;
    H: Cell;
    A: Cell;
    B: Cell;
    C: Cell;
    K: Cell;
    shafts: readonly { poles: 'all' | '2' | '4 and more'; D: Cell; E: Cell; F: Cell; fit: Cell<string> }[];`,
  columns: {
    frame: 'frame',
    height: 'frame number',
    length: 'length letter',
    isUsual: 'a length in ordinary use today',
    H: 'shaft height',
    A: 'holes across',
    B: 'holes along',
    C: 'shaft shoulder to the nearest holes',
    K: 'foot hole diameter',
    shafts: 'by pole count: D diameter, E length, F key width, ISO fit of D',
  },
  rows: iecFoot.frames.map(({ frame, height, length, usual, values: v, shaft }) => ({
    frame,
    height,
    length,
    isUsual: usual,
    H: cell(v.H),
    A: cell(v.A),
    B: cell(v.B),
    C: cell(v.C),
    K: cell(v.K),
    shafts: POLES.filter(([key]) => shaft[key]).map(([key, poles]) => shaftOf(poles, shaft[key])),
  })),
  notes: [
    ...iecFoot.rules.map(({ text }) => text),
    ...notesOf(
      iecFoot.frames.flatMap(({ frame, values, shaft }) => [
        ...['H', 'A', 'B', 'C', 'K'].map((key) => [`${frame} ${key}`, values[key]]),
        ...Object.values(shaft).flatMap((s) => ['D', 'E', 'F', 'fit'].map((key) => [`${frame} ${key}`, s[key]])),
      ]),
    ),
  ],
});

const flanges = readReference('iec/flanges.json');
write('iec-flanges', {
  header: flanges.header,
  edition: 'IEC 60072-1:1991 and 2022, EN 50347:2001',
  clause: 'IEC 60072-1 Tables 2 and 3, EN 50347 Tables 4 to 6 (clause numbers from memory)',
  unit: 'mm',
  rowType: `flange: string;
    kind: 'FF' | 'FT';
    M: Cell;
    N: Cell;
    P: Cell;
    S: Cell<number | string>;
    holes: Cell;
    R: Cell;
    oldName?: string;`,
  columns: {
    flange: 'flange; the number is M',
    kind: 'FF free holes, FT tapped holes',
    M: 'bolt circle diameter',
    N: 'spigot diameter',
    P: 'outside diameter',
    S: 'hole diameter (FF) or thread (FT)',
    holes: 'number of holes',
    R: 'shaft shoulder to flange face',
    oldName: 'name in DIN 42948, from memory',
  },
  rows: flanges.flanges.map(({ flange, kind, values: v, old_din_name }) =>
    told({
      flange,
      kind: kind === 'free holes' ? 'FF' : 'FT',
      M: cell(v.M),
      N: cell(v.N),
      P: cell(v.P),
      S: cell(v.S),
      holes: cell(v.holes),
      R: cell(v.R),
      oldName: old_din_name?.v,
    }),
  ),
  notes: [
    ...flanges.rules.map(({ text }) => text),
    ...notesOf(flanges.flanges.flatMap(({ flange, values }) => ['S'].map((key) => [`${flange} ${key}`, values[key]]))),
  ],
});
write('iec-flange-of-frame', {
  header: flanges.header,
  edition: 'EN 50347:2001',
  clause: 'Tables 4 to 6 (clause numbers from memory)',
  unit: 'none',
  rowType: `height: number;
    FF: Cell<string>;
    FTStandard?: Cell<string>;
    FTLarger?: Cell<string>;`,
  columns: {
    height: 'frame number',
    FF: 'flange with free holes',
    FTStandard: 'standard flange with tapped holes',
    FTLarger: 'larger flange with tapped holes, maker practice',
  },
  rows: flanges.assignment.map((row) =>
    told({
      height: row.height,
      FF: cell(row.FF),
      FTStandard: cell(row.FT_standard),
      FTLarger: cell(row.FT_larger),
    }),
  ),
  notes: notesOf(
    flanges.assignment.flatMap((row) => ['FF', 'FT_larger'].map((key) => [`${row.height} ${key}`, row[key]])),
  ),
});

const iecOutputs = readReference('iec/output-assignments.json');
write('iec-outputs', {
  header: iecOutputs.header,
  edition: 'EN 50347:2001',
  clause: 'Table 7 (clause number from memory)',
  unit: 'kW at 50 Hz',
  rowType: `poles: number;
    kw: number;
    frame: Cell<string>;
    isBeyond?: true;
    others?: readonly string[];`,
  columns: {
    poles: 'poles',
    kw: 'rated power',
    frame: 'frame',
    isBeyond: 'maker practice: EN 50347 stops below',
    others: 'frames that other texts print',
  },
  rows: iecOutputs.assignments.map((row) =>
    told({
      poles: row.poles,
      kw: row.kW,
      frame: [row.frame, TEXTS[row.status], sourcesOf(row)],
      isBeyond: row.basis === 'EN 50347' ? undefined : true,
      others: row.other_readings ? Object.values(row.other_readings) : undefined,
    }),
  ),
  notes: iecOutputs.rules.map(({ text }) => text),
});

const mounting = readReference('iec/mounting-codes.json');
write('iec-mounting-codes', {
  header: mounting.header,
  edition: 'IEC 60034-7:2020',
  clause: '4 (Code I), 5 (Code II)',
  unit: 'none',
  rowType: `codeI: string;
    codeII: Cell<string>;
    feet: boolean;
    flange: string;
    shaft: 'horizontal' | 'vertical down' | 'vertical up';
    feetPosition: string | null;`,
  columns: {
    codeI: 'letter code',
    codeII: 'number code',
    feet: 'has feet',
    flange: 'flange at the drive end, or what else holds it',
    shaft: 'shaft direction it is built for',
    feetPosition: 'where the feet are',
  },
  rows: mounting.codes.map((row) => ({
    codeI: row.code_I,
    codeII: [row.code_II, TEXTS[row.status], sourcesOf(row)],
    feet: row.feet,
    flange: row.flange,
    shaft: row.shaft,
    feetPosition: row.feet_position,
  })),
  notes: [
    mounting.status_scope,
    ...mounting.codes.filter(({ note }) => note).map((row) => `${row.code_I}: ${row.note}`),
    'Every turn from one position into another is allowed with checks only (canopy, drains, bearings, seal).',
  ],
});

const keys = readReference('iec/keys.json');
write('iec-keys', {
  header: keys.header,
  edition: 'ISO/R 773:1969, DIN 6885-1:1968',
  clause: 'Table 1 (clause number from memory)',
  unit: 'mm',
  rowType: `over: number;
    to: number;
    b: Cell;
    h: Cell;`,
  columns: {
    over: 'shaft diameter over',
    to: 'shaft diameter up to and including',
    b: 'key width',
    h: 'key height',
  },
  rows: keys.keys.map((row) => ({
    over: row.d_over,
    to: row.d_to,
    b: [row.b, TEXTS[row.status], sourcesOf(row)],
    h: [row.h, TEXTS[row.status], sourcesOf(row)],
  })),
  notes: [],
});

const fits = readReference('iec/fits.json');
write('iso-shaft-fits', {
  header: fits.header,
  edition: 'ISO 286-2:2010',
  clause: 'tables of shaft deviations (clause numbers from memory)',
  unit: 'mm sizes, µm deviations',
  rowType: `fit: string;
    over: number;
    to: number;
    deviations: Cell<readonly [upper: number, lower: number]>;`,
  columns: {
    fit: 'ISO class',
    over: 'diameter over',
    to: 'diameter up to and including',
    deviations: 'upper and lower deviation from nominal, with their sign',
  },
  rows: fits.deviations
    .filter((row) => ['j6', 'k6', 'm6'].includes(row.class))
    .map((row) => ({
      fit: row.class,
      over: row.over,
      to: row.to,
      deviations: [[row.upper_um, row.lower_um], TEXTS[row.status], sourcesOf(row)],
    })),
  notes: [],
});
write('iec-shaft-height', {
  header: fits.header,
  edition: 'IEC 60072-1:1991 and 2022',
  clause: 'tolerance of H (clause number from memory)',
  unit: 'mm',
  rowType: `to: number | null;
    deviations: Cell<readonly [upper: number, lower: number]>;`,
  columns: {
    to: 'shaft height up to and including; null: above the row before',
    deviations: 'upper and lower deviation from nominal, with their sign',
  },
  rows: fits.shaft_height.map((row) => ({
    to: row.H_to ?? null,
    deviations: [[row.upper_mm, row.lower_mm], TEXTS[row.status], sourcesOf(row)],
  })),
  notes: [fits.shaft_height_note.text],
});
