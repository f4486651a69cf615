import { leastKwOf } from '@/lib/matching/buy/least-kw';
import { mostAmps } from '@/lib/matching/buy/most-amps';
import { figure } from '@/lib/units/figure';
import type { Line } from '../demand';
import { ofAll, quantity } from '../quantity';
import { connectionText, ofRows, polesText, powerText, supplyText } from './rating-texts';

/** Power, speed, supply and start. */
export const RATING_LINES: readonly Line[] = [
  {
    ...{ id: 'power', label: 'Rated power', criterion: 'power', of: 'asked' },
    value: ({ ratings: [row] }) => powerText(row),
    why: 'continuous: a standard rating that carries the load below',
  },
  {
    ...{ id: 'load', label: 'Load at the motor, at most', criterion: 'power', of: 'each' },
    value: (_, set) => loadText(leastKwOf(set)),
    strictest: (sets) => loadText(ofAll(sets.map(leastKwOf), Math.max)),
    why: (_, set) =>
      set.load.shaftKw === null
        ? 'the pump’s power is not told: the failed motor’s output stands for it'
        : 'the pump’s greatest continuous power, with what gear, belt, height and unbalance take',
  },
  {
    ...{ id: 'poles', label: 'Poles', criterion: 'speed', of: 'asked' },
    value: ({ poles, ratings: [row] }) => polesText(poles, row?.hertz ?? null),
    why: 'the speed that the pump is driven at',
  },
  {
    ...{ id: 'rpm', label: 'Full-load speed', criterion: 'speed', of: 'asked' },
    value: (asked) => ofRows(asked, ({ rpm }) => quantity(rpm, 'rpm', 0)),
    why: 'it sets the flow: the offered figure is to be stated',
  },
  {
    ...{ id: 'supply', label: 'Phases, volts, hertz', criterion: 'voltage', of: 'asked' },
    value: (asked) => supplyText(asked),
    why: (_, set) =>
      set.supply.volts === null ? 'the plate' : `the plate, for a system of ${figure(set.supply.volts, 0)} V`,
  },
  {
    ...{ id: 'connection', label: 'Connection', criterion: 'starting', of: 'asked' },
    value: ({ winding, ratings: [row] }) => connectionText(winding, row?.connection ?? null),
    why: 'how the winding is joined at that voltage; where nothing asks for one, the offer states it with the leads',
  },
  {
    ...{ id: 'amps', label: 'Full-load amps, at most', criterion: 'full-load-current', of: 'asked' },
    value: (asked) => ofRows(asked, ({ amps }) => quantity(amps, 'A')),
    why: (_, set) => {
      const most = mostAmps(set);
      return most === null
        ? 'as the failed motor or a table for sizing circuits has it: starter and cable are set for it'
        : `the ${most.of} carries ${figure(most.amps, 1)} A`;
    },
  },
  {
    ...{ id: 'start', label: 'Starting', criterion: 'starting', of: 'each' },
    value: (_, { supply }) => (supply.start === null ? null : START[supply.start]),
    why: 'as the set is started',
  },
  {
    ...{ id: 'inrush', label: 'Inrush, below', criterion: 'starting', of: 'each' },
    isAsked: (_, { supply }) => supply.instantaneousTripA !== null,
    value: (_, { supply }) => tripText(supply.instantaneousTripA),
    strictest: (sets) =>
      tripText(
        ofAll(
          sets.map(({ supply }) => supply.instantaneousTripA),
          Math.min,
        ),
      ),
    why: 'the instantaneous trip stands there',
  },
  {
    ...{ id: 'design', label: 'Design letter', criterion: 'breakaway', of: 'asked' },
    value: ({ design }) => design,
    why: 'least torques by NEMA MG 1 12.38 to 12.40, or IEC 60034-12',
  },
  {
    ...{ id: 'locked-rotor', label: 'Locked-rotor torque, at least', criterion: 'breakaway', of: 'asked' },
    isAsked: ({ lockedRotorPct }) => lockedRotorPct !== null,
    value: ({ lockedRotorPct }) => quantity(lockedRotorPct, '% of full-load torque', 0),
    why: 'the pump breaks away harder than the letter promises',
  },
  {
    ...{ id: 'breakdown', label: 'Breakdown torque, at least', criterion: 'breakaway', of: 'asked' },
    isAsked: ({ breakdownPct }) => breakdownPct !== null,
    value: ({ breakdownPct }) => quantity(breakdownPct, '% of full-load torque', 0),
    why: 'the pump breaks away on the drive',
  },
  {
    ...{ id: 'duty', label: 'Duty', criterion: 'duty', of: 'asked' },
    value: ({ duty }) => duty,
    why: 'continuous running, IEC 60034-1',
  },
  {
    ...{ id: 'starts', label: 'Starts in an hour, at most', criterion: null, of: 'each' },
    value: () => null,
    why: 'the register keeps none: ask whoever runs the pump',
  },
  {
    ...{ id: 'efficiency', label: 'Nominal efficiency, at least', criterion: 'efficiency-class', of: 'asked' },
    value: (asked) => ofRows(asked, ({ efficiencyPct }) => quantity(efficiencyPct, '% at full load')),
    why: 'premium at 60 Hz (NEMA MG 1 Table 12-12), IE3 at 50 Hz (IEC 60034-30-1); what the law asks stands below',
  },
];

const loadText = (kw: number | null) => quantity(kw, 'kW', 2);
const tripText = (amps: number | null) => quantity(amps, 'A', 0);

const START = {
  direct: 'direct',
  'star-delta': 'star-delta',
  'part-winding': 'part winding, declared for it',
  soft: 'soft starter',
  drive: 'by the drive',
} as const;
