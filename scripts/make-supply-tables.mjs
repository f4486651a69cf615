/**
 * Writes the supply tables of lib/standards/tables (currents, code letters, nominal voltages, 60 Hz motors on 50 Hz)
 * from a folder of transcribed standards.
 *
 *     node scripts/make-supply-tables.mjs REFERENCE_DIR
 *
 * REFERENCE_DIR holds electrical/*.json. Figures are carried over as printed, each with the number of texts it was
 * read in and their codes; nothing is converted, rounded or worked out. Running it twice writes the same bytes.
 */
import { cell, readReference, write } from './table-file.mjs';

const torque = readReference('torque');
write(
  {
    file: 'code-letters',
    name: 'codeLetters',
    type: `export interface CodeLetterRow {
  letter: string;
  from: Cell;
  /** Null: open at the top. */
  to: Cell | null;
}`,
    source: { standard: 'NFPA 70 (NEC)', edition: '2023', clause: 'NEC Table 430.7(B)' },
    unit: 'kVA per hp with locked rotor',
    columns: { letter: 'code letter on the plate', from: 'lower end of the band', to: 'upper end of the band' },
    rows: torque.code_letters.map((row) => ({ letter: row.letter, from: cell(row.min), to: cell(row.max) })),
    notes: [`Each band ${torque.code_letter_boundary.v.replace(/^each range /, '')} (from memory).`],
  },
  torque.sources,
);
write(
  {
    file: 'locked-rotor-currents',
    name: 'lockedRotorCurrents',
    type: `export interface LockedRotorCurrentRow {
  hp: number;
  amps: Cell;
}`,
    source: { standard: 'NEMA MG 1', edition: 'MG 1-2016', clause: 'NEMA MG 1-12.35' },
    unit: 'A at 230 V, 60 Hz',
    columns: { hp: 'rated power', amps: 'greatest locked-rotor current of designs B, C and D, three-phase' },
    rows: torque.nema_12_35_locked_rotor_current_230V_design_BCD.map((row) => ({
      hp: row.hp,
      amps: cell(row.amps_230),
    })),
    notes: ['At other rated voltages the current is inversely proportional to the voltage (read in one text).'],
  },
  torque.sources,
);

const currents = readReference('flc-nec');
const VOLTS = ['115', '200', '208', '230', '460', '575', '2300'];
const currentRows = (phases, rows) =>
  rows.map((row) => ({ phases, hp: row.hp, amps: VOLTS.map((volts) => cell(row[volts])) }));
write(
  {
    file: 'full-load-currents',
    name: 'fullLoadCurrents',
    type: `/** \`amps\`: at 115, 200, 208, 230, 460, 575 and 2300 V; null where nothing is printed. */
export interface FullLoadCurrentRow {
  phases: 1 | 3;
  hp: number;
  amps: readonly (Cell | null)[];
}`,
    source: { standard: 'NFPA 70 (NEC)', edition: '2023', clause: 'NEC Tables 430.248 and 430.250' },
    unit: 'A',
    columns: {
      phases: '1: Table 430.248; 3: Table 430.250, induction type',
      hp: 'rated power',
      amps: 'table current at rated motor volts of 115, 200, 208, 230, 460, 575, 2300',
    },
    rows: [...currentRows(1, currents.single_phase_430_248), ...currentRows(3, currents.three_phase_430_250_induction)],
    notes: [
      'Currents for sizing a circuit, usually above the plate of a modern motor: never evidence of what a motor draws.',
    ],
  },
  currents.sources,
);

const supply = readReference('supply');
write(
  {
    file: 'nominal-voltages',
    name: 'nominalVoltages',
    type: `export interface NominalVoltageRow {
  system: number;
  plate: Cell;
}`,
    source: {
      standard: 'NFPA 70 (NEC)',
      edition: '2008',
      clause: 'NEC Table 430.250, voltage ranges of its columns',
    },
    unit: 'V between lines, 60 Hz',
    columns: { system: 'nominal system voltage', plate: 'rated voltage of the motors built for it' },
    rows: supply.nominal_vs_nameplate.north_america_60hz.map((row) => ({
      system: row.system,
      plate: cell(row.nameplate),
    })),
    notes: ['A plate is below its nominal system by design, for the drop to the motor (read in one text).'],
  },
  supply.sources,
);

const conversion = readReference('frequency-conversion');
const { derate_table: derate } = conversion.sixty_hz_motor_on_50hz;
const derateRows = (enclosure, shares) =>
  derate.voltage_pairs.flatMap((pair) =>
    pair.columns_50hz.map((volts50, i) => ({
      enclosure,
      volts60: pair.rated_60hz,
      volts50,
      share: cell(shares[i]),
    })),
  );
write(
  {
    file: 'frequency-derate',
    name: 'frequencyDerates',
    type: `export interface FrequencyDerateRow {
  enclosure: 'open' | 'closed';
  volts60: number;
  volts50: number;
  share: Cell;
}`,
    source: {
      standard: 'An application note on 60 Hz motors on 50 Hz supplies',
      edition: 'undated',
      clause: 'derating table for 60 Hz motors on 50 Hz',
    },
    unit: 'share of the 60 Hz output',
    columns: {
      enclosure: 'open: drip-proof; closed: totally enclosed, fan-cooled',
      volts60: 'plate volts at 60 Hz',
      volts50: 'supply volts at 50 Hz',
      share: 'output left, with a service factor of 1.0',
    },
    rows: [...derateRows('open', derate.open_drip_proof), ...derateRows('closed', derate.tefc)],
    notes: [
      'Direct on line, 2, 4 and 6 poles, supply within 5 per cent. A guideline of one text, not a standard.',
      'Another text line limits the output to five sixths of the 60 Hz plate.',
    ],
  },
  conversion.sources,
);
