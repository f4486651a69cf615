import { classificationText } from '@/lib/fields/classification-text';
import { AUXILIARY_WORDS, TURN_WORDS } from '@/lib/fields/plate-words';
import { COUPLED_WORDS, HELD_WORDS, LOAD_WORDS, STARTED_WORDS } from '@/lib/fields/set-words';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';

export interface Fact {
  label: string;
  value: string;
}

const NOT_KNOWN = 'not known';

/** How the set holds and couples its motor, as far as anybody told. */
export function seatFacts({ mounting, shaftDirection, seat, coupling, base }: PumpSet): Fact[] {
  return told([
    ['Held by', `${HELD_WORDS[mounting]}${shaftDirection === null ? '' : `, shaft ${shaftDirection}`}`],
    ['Coupling', coupling.type === null ? NOT_KNOWN : COUPLED_WORDS[coupling.type]],
    ['Ratio', coupling.ratio === null ? null : `${figure(coupling.ratio)} : 1`],
    ['Hub', hubText(coupling)],
    ['Quill depth', mm(coupling.quill.depthMm)],
    ['Gap', mm(coupling.gapMm)],
    ['Greatest torque', coupling.maxTorqueNm === null ? null : `${figure(coupling.maxTorqueNm)} N·m`],
    ['Motor sheave', mm(coupling.sheave.pitchDiameterMm)],
    ['Shaft height, measured', mm(seat.shaftHeightMm)],
    ['Holes across, measured', mm(seat.holesAcrossMm)],
    ['Holes along, measured', mm(seat.holesAlongMm)],
    ['Bolts', mm(seat.boltMm)],
    ['Holes to shaft end, measured', mm(seat.holeToShaftEndMm)],
    ['Face', seat.face],
    ['Shims there', shimsText(base)],
    ['May be slotted', yesNo(base.slotting)],
    ['May get a transition base', yesNo(base.transitionBase)],
    ['Room for its length', mm(base.maxLengthMm)],
    ['Greatest mass', base.maxMassKg === null ? null : `${figure(base.maxMassKg)} kg`],
    [
      'Cable comes in',
      base.cableEntry === null ? null : base.cableEntry === 'top' ? 'at the top' : `at the ${base.cableEntry}`,
    ],
  ]);
}

/** What the pump asks. */
export function dutyFacts({ load, rotation }: PumpSet): Fact[] {
  return told([
    ['Load', load.kind === null ? NOT_KNOWN : LOAD_WORDS[load.kind]],
    ['Shaft power at the pump', load.shaftKw === null ? NOT_KNOWN : `${figure(load.shaftKw)} kW`],
    ['Pump speed', load.atPumpRpm === null ? NOT_KNOWN : `${figure(load.atPumpRpm)} rpm`],
    ['Greatest pump speed', load.maxPumpRpm === null ? null : `${figure(load.maxPumpRpm)} rpm`],
    ['Flow may change by', load.flowTolerancePct === null ? null : `${figure(load.flowTolerancePct)} %`],
    ['Breakaway', load.breakawayPct === null ? null : `${figure(load.breakawayPct)} % of the load torque`],
    ['Static head', load.staticHeadPct === null ? null : `${figure(load.staticHeadPct)} %`],
    ['Turns', rotation === null ? NOT_KNOWN : TURN_WORDS[rotation]],
  ]);
}

export function supplyFacts({ supply }: PumpSet): Fact[] {
  const { drive } = supply;
  return told([
    ['Supply', supplyText(supply)],
    ['Measured', supply.measuredVolts === null ? null : `${figure(supply.measuredVolts)} V`],
    ['Unbalance', supply.unbalancePct === null ? null : `${figure(supply.unbalancePct)} %`],
    ['Start', supply.start === null ? NOT_KNOWN : STARTED_WORDS[supply.start]],
    ['Overload dial', range(supply.overloadMinA, supply.overloadMaxA, 'A')],
    ['Contactor', amps(supply.contactorA)],
    ['Cable', amps(supply.cableA)],
    ['Instantaneous trip', amps(supply.instantaneousTripA)],
    ['Capacitors', supply.capacitorKvar === null ? null : `${figure(supply.capacitorKvar)} kvar`],
    ['Drive rating', drive === null ? null : amps(drive.ratedA)],
    ['Drive output', drive === null || drive.outputVolts === null ? null : `${figure(drive.outputVolts)} V`],
    ['Drive frequency', drive === null ? null : range(drive.minHertz, drive.maxHertz, 'Hz')],
  ]);
}

export function surroundingsFacts({ surroundings, needs }: PumpSet): Fact[] {
  const { ip, washdown, ambientC, altitudeM, classification } = surroundings;
  return told([
    ['Enclosure at least', ip],
    ['Washed down', yesNo(washdown)],
    ['Ambient', ambientC === null ? NOT_KNOWN : `${figure(ambientC)} °C`],
    ['Altitude', altitudeM === null ? NOT_KNOWN : `${figure(altitudeM)} m`],
    [
      'Classification',
      classification === undefined
        ? NOT_KNOWN
        : classification === null
          ? 'unclassified'
          : classificationText(classification),
    ],
    ['Uses', needs.length === 0 ? null : needs.map((one) => AUXILIARY_WORDS[one]).join(', ')],
  ]);
}

const told = (facts: readonly (readonly [string, string | null])[]): Fact[] =>
  facts.flatMap(([label, value]) => (value === null ? [] : [{ label, value }]));

const mm = (value: number | null) => (value === null ? null : `${figure(value, 3)} mm`);
const amps = (value: number | null) => (value === null ? null : `${figure(value)} A`);
const yesNo = (value: boolean | null) => (value === null ? null : value ? 'yes' : 'no');

function range(from: number | null, to: number | null, unit: string): string | null {
  if (from === null && to === null) return null;
  if (from !== null && to !== null) return `${figure(from)} to ${figure(to)}\u00a0${unit}`;
  return from === null ? `up to ${figure(to as number)}\u00a0${unit}` : `from ${figure(from)}\u00a0${unit}`;
}

function hubText({ hub }: PumpSet['coupling']): string | null {
  const parts = [
    hub.boreMm === null ? null : `Ø${figure(hub.boreMm, 3)}\u00a0mm`,
    hub.lengthMm === null ? null : `${figure(hub.lengthMm)}\u00a0mm long`,
    hub.bushed === null ? null : hub.bushed ? 'bushed' : 'plain bore',
  ].filter((part) => part !== null);
  return parts.length === 0 ? null : parts.join(', ');
}

function shimsText({ shimsPresentMm, shimLimitMm }: PumpSet['base']): string {
  const there = shimsPresentMm === null ? NOT_KNOWN : figure(shimsPresentMm);
  if (shimLimitMm === null) return shimsPresentMm === null ? there : `${there}\u00a0mm`;
  return shimsPresentMm === null
    ? `${there}, limit ${figure(shimLimitMm)}\u00a0mm`
    : `${there} of ${figure(shimLimitMm)}\u00a0mm`;
}

function supplyText({ volts, hertz, phases }: PumpSet['supply']): string {
  const part = (value: number | null, unit: string) =>
    value === null ? `?\u00a0${unit}` : `${figure(value)}\u00a0${unit}`;
  return `${part(volts, 'V')}, ${part(hertz, 'Hz')}, ${phases === null ? '?' : phases}-phase`;
}
