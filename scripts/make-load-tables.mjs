/**
 * Writes the torque, derating and efficiency tables of lib/standards/tables from a folder of transcribed standards.
 *
 *     node scripts/make-load-tables.mjs REFERENCE_DIR
 *
 * REFERENCE_DIR holds electrical/*.json. Figures are carried over as printed, each with the number of texts it was
 * read in and their codes; nothing is converted, rounded or worked out. Running it twice writes the same bytes.
 */
import { cell, readReference, write } from './table-file.mjs';

const SPEEDS = ['3600', '1800', '1200', '900', '720', '600', '514'];
const POLES = ['2', '4', '6', '8'];

const torque = readReference('torque');
const bySpeed = (rows, design) =>
  rows.map((row) => ({ design, hp: row.hp, pct: SPEEDS.map((speed) => cell(row[speed])) }));
// The last Design C row is printed as one row for 25 to 200 hp: 25 and 200 are its ends.
const designC = torque.nema_12_38_locked_rotor_torque_design_C_memory.flatMap((row) =>
  row.hp === '25-200'
    ? [
        { ...row, hp: 25 },
        { ...row, hp: 200 },
      ]
    : [row],
);
const nema = (name, what, clause, rows, notes) =>
  write(
    {
      ...name,
      type: `/** \`pct\`: at 3600, 1800, 1200, 900, 720, 600 and 514 rpm; null where the standard prints nothing. */
export interface ${name.row} {
  design: 'AB' | 'C';
  hp: number;
  pct: readonly (Cell | null)[];
}`,
      source: { standard: 'NEMA MG 1', edition: 'MG 1-2016', clause },
      unit: 'per cent of full-load torque',
      columns: {
        design: 'design letter: A and B share one table',
        hp: 'rated power',
        pct: `least ${what} torque at synchronous speeds of 3600, 1800, 1200, 900, 720, 600, 514 rpm (60 Hz)`,
      },
      rows,
      notes,
    },
    torque.sources,
  );
nema(
  { file: 'locked-rotor-torque', name: 'lockedRotorTorque', row: 'LockedRotorTorqueRow' },
  'locked-rotor',
  'MG 1-12.38',
  [...bySpeed(torque.nema_12_38_locked_rotor_torque_design_AB, 'AB'), ...bySpeed(designC, 'C')],
  [
    torque.table_note,
    'Design C is printed to 200 hp; 25 to 200 hp is one row, carried here by its two ends.',
    'Design D, 4 to 8 poles up to 150 hp: 275 per cent or more (read in one text).',
  ],
);
nema(
  { file: 'breakdown-torque', name: 'breakdownTorque', row: 'BreakdownTorqueRow' },
  'breakdown',
  'MG 1-12.39',
  bySpeed(torque.nema_12_39_breakdown_torque_design_AB, 'AB'),
  [
    torque.table_note,
    'Design C: a general table gives a band of 190 to 225 per cent (read in one text); no table by power was read.',
  ],
);
nema(
  { file: 'pull-up-torque', name: 'pullUpTorque', row: 'PullUpTorqueRow' },
  'pull-up',
  'MG 1-12.40',
  bySpeed(torque.nema_12_40_pull_up_torque_design_AB, 'AB'),
  [torque.table_note, 'Designs C and D: no table was read.'],
);
write(
  {
    file: 'iec-torque',
    name: 'iecTorque',
    type: `/** Each of the three: at 2, 4, 6 and 8 poles. */
export interface IecTorqueRow {
  kwOver: number;
  kwUpTo: number;
  lockedRotor: readonly (Cell | null)[];
  pullUp: readonly (Cell | null)[];
  breakdown: readonly (Cell | null)[];
}`,
    source: { standard: 'IEC 60034-12', edition: '2002 with amendment 2007', clause: 'Table 1, design N' },
    unit: 'per unit of rated torque',
    columns: {
      kwOver: 'band of rated power, kW: above',
      kwUpTo: 'up to and including',
      lockedRotor: 'least locked-rotor torque at 2, 4, 6, 8 poles',
      pullUp: 'least pull-up torque at 2, 4, 6, 8 poles',
      breakdown: 'least breakdown torque at 2, 4, 6, 8 poles',
    },
    rows: torque.iec_60034_12_design_N_minimum_torques.map((row) => ({
      kwOver: row.kw_over,
      kwUpTo: row.kw_up_to,
      lockedRotor: POLES.map((p) => cell(row[p].locked_rotor)),
      pullUp: POLES.map((p) => cell(row[p].pull_up)),
      breakdown: POLES.map((p) => cell(row[p].breakdown)),
    })),
    notes: [torque.iec_60034_12_note],
  },
  torque.sources,
);

const derating = readReference('derating');
const ambient = derating.ambient_and_altitude_factor_table;
write(
  {
    file: 'derating',
    name: 'derating',
    type: `/** \`factors\`: at 1000, 1500, 2000, 2500, 3000, 3500 and 4000 m. */
export interface DeratingRow {
  ambientC: number;
  factors: readonly Cell[];
}`,
    source: {
      standard:
        'none: a motor application manual. NEMA MG 1 14.3 and IEC 60034-1 6 set only the limits of 40 degC and 1000 m',
      edition: 'undated',
      clause: 'reduction factors for ambient temperature and altitude',
    },
    unit: 'multiplier of rated output',
    columns: { ambientC: 'ambient, degC', factors: 'at 1000, 1500, 2000, 2500, 3000, 3500, 4000 m' },
    rows: ambient.rows.map((row) => ({ ambientC: row.ambient_c, factors: row.factors.map(cell) })),
    notes: [
      'For 1 to 200 hp on a sine-wave supply, not explosion-proof, service factor not used. A guideline, not a standard.',
      'A second text prints altitude bands at 40 degC (0.97 to 5000 ft, 0.94 to 6600, 0.90 to 8300, 0.86 to 9900, 0.82 to 11 500) that agree.',
      'The bands hold up to and including their upper end, so a height between two columns takes the higher one.',
    ],
  },
  derating.sources,
);

const supply = readReference('supply');
write(
  {
    file: 'unbalance-derating',
    name: 'unbalanceDerating',
    type: `export interface UnbalanceDeratingRow {
  unbalancePct: number;
  factor: Cell;
}`,
    source: { standard: 'NEMA MG 1', edition: 'MG 1-2016', clause: 'MG 1-14.36.2, Figure 14-1' },
    unit: 'multiplier of rated output',
    columns: {
      unbalancePct: 'greatest deviation from the mean of the three line voltages, per cent of the mean',
      factor: 'read off the drawn curve',
    },
    rows: supply.voltage_unbalance.derating_curve.map((row) => ({
      unbalancePct: row.unbalance,
      factor: cell(row.factor),
    })),
    notes: [supply.voltage_unbalance.curve_note],
  },
  supply.sources,
);

const vfd = readReference('vfd');
write(
  {
    file: 'low-speed-torque',
    name: 'lowSpeedTorque',
    type: `export interface LowSpeedTorqueRow {
  speedPu: number;
  torquePu: Cell;
}`,
    source: {
      standard:
        'none: a guidance curve for motors cooled by their own fan; NEMA MG 1 30.2.2.2 and IEC TS 60034-25 show such curves',
      edition: 'undated',
      clause: 'torque at reduced speed, fan-cooled',
    },
    unit: 'per unit of rated torque',
    columns: { speedPu: 'speed, per unit of base speed', torquePu: 'continuous torque a fan-cooled motor may give' },
    rows: vfd.low_speed_torque_fan_cooled
      .map((row) => ({ speedPu: row.speed_pu, torquePu: cell(row.continuous_torque_pu) }))
      .sort((a, b) => a.speedPu - b.speedPu),
    notes: ['From memory throughout: for screening only.'],
  },
  vfd.sources ?? {},
);

const us = readReference('efficiency-us');
const level = (key, name) =>
  us[key].rows.flatMap((row) =>
    ['enclosed', 'open'].map((build) => ({
      level: name,
      build,
      hp: row.hp,
      pct: POLES.map((p) => cell(row[build]?.[p])),
    })),
  );
write(
  {
    file: 'efficiency-us',
    name: 'efficiencyUs',
    type: `/** \`pct\`: at 2, 4, 6 and 8 poles; null where nothing is printed. */
export interface EfficiencyUsRow {
  level: 'premium' | 'energy-efficient';
  build: 'enclosed' | 'open';
  hp: number;
  pct: readonly (Cell | null)[];
}`,
    source: {
      standard: 'NEMA MG 1; 10 CFR 431.25',
      edition: 'MG 1-2016',
      clause: 'MG 1 Tables 12-12 (premium) and 12-11 (energy efficient)',
    },
    unit: 'per cent, nominal at full load, 60 Hz',
    columns: {
      level: 'premium (12-12) or energy-efficient (12-11)',
      build: 'enclosed or open motor',
      hp: 'rated power',
      pct: 'at 2, 4, 6, 8 poles',
    },
    rows: [
      ...level('premium_nema_mg1_table_12_12', 'premium'),
      ...level('energy_efficient_nema_mg1_table_12_11', 'energy-efficient'),
    ],
    notes: ['Premium enclosed at 60 Hz is IE3; energy-efficient is about IE2.'],
  },
  us.sources,
);

const iec = readReference('efficiency-iec');
write(
  {
    file: 'efficiency-iec',
    name: 'efficiencyIec',
    type: `/** \`pct\`: at 2, 4, 6 and 8 poles; null where nothing is printed. */
export interface EfficiencyIecRow {
  level: 'IE1' | 'IE2' | 'IE3' | 'IE4';
  kw: number;
  pct: readonly (Cell | null)[];
}`,
    source: {
      standard: 'IEC 60034-30-1; Regulation (EU) 2019/1781',
      edition: '2014',
      clause: 'nominal efficiency limits, 50 Hz',
    },
    unit: 'per cent, nominal at full load, 50 Hz',
    columns: { level: 'class', kw: 'rated power', pct: 'at 2, 4, 6, 8 poles' },
    rows: ['IE1', 'IE2', 'IE3', 'IE4'].flatMap((name) =>
      iec.fifty_hz[name].map((row) => ({
        level: name,
        kw: typeof row.kw === 'number' ? row.kw : 1000,
        pct: POLES.map((p) => cell(row[p])),
      })),
    ),
    notes: ['The row at 1000 kW is printed as "above 200 up to 1000".'],
  },
  iec.sources,
);

const load = readReference('load-estimation');
write(
  {
    file: 'part-load-efficiency',
    name: 'partLoadEfficiency',
    type: `/** \`ratios\`: at 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0 and 1.2 of rated load. */
export interface PartLoadEfficiencyRow {
  ratedInputKw: number;
  ratios: readonly Cell[];
}`,
    source: {
      standard:
        'none: US Department of Energy Motor Challenge fact sheet, Determining Electric Motor Load and Efficiency',
      edition: '1996',
      clause: 'Figure 1, digitised in a building-simulation library',
    },
    unit: 'efficiency over the greatest efficiency of the motor',
    columns: { ratedInputKw: 'rated power', ratios: 'at 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0, 1.2 of rated load' },
    rows: load.part_load_efficiency_ratio.rows.map((row) => ({
      ratedInputKw: Number(row.rated_input_kw.v ?? row.rated_input_kw),
      ratios: row.ratio.map(cell),
    })),
    notes: [],
  },
  load.sources,
);

const ratings = readReference('ratings');
write(
  {
    file: 'customary-pairs',
    name: 'customaryPairs',
    type: `/** A horsepower and the kW the trade stamps for it. */
export interface CustomaryPairRow {
  hp: number;
  kw: Cell;
}`,
    source: {
      standard: '10 CFR 431.25 and 431.446',
      edition: '2006 and later',
      clause: 'horsepower and standard kilowatt equivalent',
    },
    unit: 'kW',
    columns: { hp: 'rated horsepower', kw: 'its standard kilowatt equivalent' },
    rows: ratings.customary_pairs_us_regulation.map(({ hp, kw }) => ({ hp, kw: cell(kw) })),
    notes: ['0.33 stands for a third of a horsepower.'],
  },
  ratings.sources,
);
