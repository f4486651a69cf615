import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { areaInWords } from '@/lib/standards/area-order';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figure } from '@/lib/units/figure';
import { fedBy } from '../context/fed-by';

/** One demand of a purchase: null where neither set nor failed motor nor standard tells it, for the buyer to fill in. */
export interface Demand {
  label: string;
  value: string | null;
  /** Why it is asked, or what the supplier is to confirm. */
  why: string | null;
}

export interface DemandGroup {
  title: string;
  demands: readonly Demand[];
}

/** Everything a supplier needs to offer the motor `asked` (of `buyable`) for a set. */
export function purchaseSpecification(set: PumpSet, asked: Motor): DemandGroup[] {
  return [
    { title: 'Rating', demands: rating(set, asked) },
    { title: 'Mounting and shaft', demands: mount(set, asked) },
    { title: 'Build', demands: build(set, asked) },
    { title: 'With the offer', demands: OFFER },
  ];
}

const demand = (label: string, value: string | null, why: string | null = null): Demand => ({ label, value, why });
const quantity = (value: number | null | undefined, unit: string, digits = 1): string | null =>
  value === null || value === undefined ? null : `${figure(value, digits)} ${unit}`;

function rating(set: PumpSet, asked: Motor): Demand[] {
  const [row] = asked.ratings;
  const { isDriveFed } = fedBy(set);
  const kw = quantity(row?.kw, 'kW', 2);
  const power = row?.hp ? `${figure(row.hp)} hp (${kw})` : kw;
  return [
    demand('Power', power, 'continuous, at the pump’s worst duty'),
    demand('Poles', asked.poles === null ? null : String(asked.poles)),
    demand(
      'Full-load speed',
      quantity(row?.rpm, 'rpm', 0),
      'the speed sets the flow: the offered figure is to be stated',
    ),
    demand('Phases, volts, hertz', supplyText(asked), systemText(set)),
    demand('Full-load amps, at most', quantity(row?.amps, 'A'), 'starter and cable are sized for it'),
    demand(
      'Starting',
      startText(set),
      set.supply.start === 'star-delta' ? 'six ends out, delta at line voltage' : null,
    ),
    demand('Design letter', asked.design, 'least torques as NEMA MG 1 12.38 to 12.40 or IEC 60034-12'),
    demand('Duty', asked.duty),
    demand(
      'Drive',
      isDriveFed
        ? `inverter duty, speed range ${asked.constantTorqueRange ?? '?'} : 1 at constant torque`
        : 'on the mains',
      isDriveFed ? 'insulation and bearings suited to the drive and its cable' : null,
    ),
    demand(
      'Nominal efficiency, at least',
      quantity(row?.efficiencyPct, '%'),
      'check the law of the place for the least class',
    ),
  ];
}

function supplyText({ phases, ratings: [row] }: Motor): string | null {
  if (phases === null || !row?.volts || !row.hertz) return null;
  return `${phases} × ${figure(row.volts, 0)} V, ${figure(row.hertz, 0)} Hz${row.connection === null ? '' : `, ${row.connection}`}`;
}

function systemText({ supply }: PumpSet): string | null {
  return supply.volts === null ? null : `for a system of ${figure(supply.volts, 0)} V`;
}

const START = {
  direct: 'direct',
  'star-delta': 'star-delta',
  'part-winding': 'part winding, declared for it',
  soft: 'soft starter',
  drive: 'by the drive',
} as const;
const startText = ({ supply }: PumpSet) => (supply.start === null ? null : START[supply.start]);

const DIRECTION = { horizontal: 'shaft horizontal', down: 'shaft down', up: 'shaft up' } as const;
const BOX = { left: 'left', right: 'right', top: 'top' } as const;
const ROTATION = { cw: 'clockwise', ccw: 'counter-clockwise', either: 'either way' } as const;

function mount(set: PumpSet, asked: Motor): Demand[] {
  const { dimensions, face, shaftFit } = motorDimensions(asked);
  const { shaftHeightMm, shaftDiameterMm, shaftLengthMm, keyWidthMm } = dimensions;
  const faceText = face === null ? 'none' : face.name;
  return [
    demand('Frame', asked.frame, shaftHeightMm.cite),
    demand('Mounting', asked.mounting ?? (set.mounting === 'foot' ? 'feet' : 'feet and face'), null),
    demand('Position', set.shaftDirection === null ? null : DIRECTION[set.shaftDirection]),
    demand('Shaft height', quantity(shaftHeightMm.value, 'mm', 2)),
    demand('Shaft', shaftText(shaftDiameterMm.value, shaftLengthMm.value, shaftFit), shaftDiameterMm.cite),
    demand('Key, width', quantity(keyWidthMm.value, 'mm', 3)),
    demand('Face', set.mounting === 'foot' ? 'none' : face === null ? null : faceText, face?.cite ?? null),
    demand('Terminal box', asked.terminalBox && BOX[asked.terminalBox], 'seen from the drive end, feet down'),
    demand('Rotation', set.rotation && ROTATION[set.rotation], 'seen from the drive end'),
    demand('Length, at most', quantity(set.base.maxLengthMm, 'mm', 0)),
    demand('Mass, at most', quantity(set.base.maxMassKg, 'kg', 0)),
  ];
}

function shaftText(diameterMm: number | null, lengthMm: number | null, fit: string | null): string | null {
  if (diameterMm === null) return null;
  const length = lengthMm === null ? '' : `, ${figure(lengthMm, 1)} mm long`;
  return `${figure(diameterMm, 3)} mm${fit === null ? '' : ` ${fit}`}${length}`;
}

function build(set: PumpSet, asked: Motor): Demand[] {
  const { classification, altitudeM, ambientC, washdown } = set.surroundings;
  const mark = classification ?? asked.classification;
  const area = classification === null ? 'unclassified' : mark === null ? null : areaInWords(mark);
  return [
    demand('Enclosure', asked.ip, asked.enclosure),
    demand('Ambient, up to', quantity(ambientC === null ? null : asked.ambientC, '°C', 0)),
    demand('Altitude', quantity(altitudeM, 'm', 0)),
    demand('Insulation class', asked.insulation, 'temperature rise of class B'),
    demand(
      'Hazardous area',
      area,
      area === 'unclassified' ? null : 'a competent person approves the mark and the certificate',
    ),
    demand('Washdown', washdown === null ? asked.washdown : washdown ? (asked.washdown ?? 'yes') : 'no'),
    demand('With', asked.has === null || asked.has.length === 0 ? 'no auxiliaries' : asked.has.join(', ')),
    demand('Brake torque', quantity(asked.brake.torqueNm, 'N·m')),
    demand('Brake coil', quantity(asked.brake.volts, 'V', 0)),
  ].filter(({ label, value }) => !label.startsWith('Brake') || value !== null);
}

const OFFER: readonly Demand[] = [
  demand('Dimension drawing', 'with the shaft, foot holes, face and terminal box'),
  demand(
    'Data sheet',
    'speed, amps, power factor and efficiency at 50, 75 and 100 % load, locked-rotor current and torque',
  ),
  demand('Certificates', 'routine test; the area certificate where one is asked above'),
  demand('Mass and lifting points', 'stated'),
];
