import { classificationField } from './classification-field';
import {
  choiceField,
  type Field,
  figureChoice,
  figureField,
  lengthField,
  manyField,
  massField,
  powerField,
  temperatureField,
  textField,
  yesNoField,
} from './field';
import type { FieldGroup } from './motor-fields';
import { AUXILIARY_WORDS, TURN_WORDS } from './plate-words';
import {
  COUPLED_WORDS,
  DIAL_WORDS,
  ENTRY_WORDS,
  HELD_WORDS,
  INPUT_WORDS,
  LOAD_WORDS,
  POINTS_WORDS,
  STARTED_WORDS,
} from './set-words';

/** What surrounds a place: an area's, or a set's own where it differs. */
export const SURROUNDINGS: readonly Field[] = [
  textField('surroundings.ip', 'Enclosure at least', 10, { hint: 'IP55; X where a digit does not matter.' }),
  yesNoField('surroundings.washdown', 'Washed down'),
  temperatureField('surroundings.ambientC', 'Ambient'),
  figureField('surroundings.altitudeM', 'Altitude', 'm', [-500, 6_000]),
  classificationField('surroundings.classification', 'Classification', { atPlace: true }),
];

/** A set's fields, as one walks up to it: what it is, how it holds, couples, loads, feeds and surrounds its motor. */
export const SET_GROUPS: readonly FieldGroup[] = [
  {
    title: 'The set',
    fields: [
      textField('tag', 'Tag', 60),
      textField('service', 'What it serves', 200),
      figureChoice('criticality', 'Criticality', { 1: '1, stops the plant', 2: '2', 3: '3', 4: '4, can wait' }),
      textField('pump.description', 'Pump', 200, { hint: 'What it is: “lobe pump, 3 in”.' }),
      textField('pump.kind', 'Kind of pump', 60),
      textField('pump.maker', 'Maker of the pump', 80),
      textField('pump.serial', 'Serial number of the pump', 60),
    ],
  },
  {
    title: 'Seat',
    fields: [
      choiceField('mounting', 'Held by', HELD_WORDS),
      choiceField('shaftDirection', 'Shaft points', POINTS_WORDS),
      choiceField('rotation', 'Turns', TURN_WORDS),
      lengthField('seat.shaftHeightMm', 'Shaft height, measured', 1_000),
      lengthField('seat.holesAcrossMm', 'Holes across, measured', 2_000),
      lengthField('seat.holesAlongMm', 'Holes along, measured', 2_000),
      lengthField('seat.boltMm', 'Bolts', 100),
      lengthField('seat.holeToShaftEndMm', 'Holes to shaft end, measured', 2_000),
      textField('seat.face', 'Face it offers', 40, { hint: 'FF165, 182TC.' }),
      lengthField('base.shimsPresentMm', 'Shims there', 100),
      lengthField('base.shimLimitMm', 'Shims at most', 100),
      yesNoField('base.slotting', 'Base may be slotted'),
      yesNoField('base.transitionBase', 'May get a transition base'),
      lengthField('base.maxLengthMm', 'Room for its length', 10_000),
      massField('base.maxMassKg', 'Greatest mass'),
      choiceField('base.cableEntry', 'Cable comes in', ENTRY_WORDS),
    ],
  },
  {
    title: 'Coupling',
    fields: [
      choiceField('coupling.type', 'Coupled by', COUPLED_WORDS),
      choiceField('coupling.input', 'Motor shaft goes into', INPUT_WORDS),
      figureField('coupling.ratio', 'Motor speed to pump speed, to 1', null, [0.001, 500]),
      figureField('coupling.efficiencyPct', 'Efficiency of it', '%', [0.1, 100]),
      lengthField('coupling.hub.boreMm', 'Hub bore', 300),
      lengthField('coupling.hub.keyWidthMm', 'Hub key width', 100),
      lengthField('coupling.hub.lengthMm', 'Hub length', 600),
      yesNoField('coupling.hub.bushed', 'Hub is bushed'),
      lengthField('coupling.hub.reboreToMm', 'Hub may be bored to', 300),
      yesNoField('coupling.hub.sleeve', 'Hub may be sleeved'),
      yesNoField('coupling.hub.replaceable', 'Hub can be replaced'),
      lengthField('coupling.quill.depthMm', 'Quill depth', 600),
      yesNoField('coupling.quill.bushing', 'Quill may be bushed'),
      lengthField('coupling.gapMm', 'Gap between shafts', 500),
      lengthField('coupling.gapMinMm', 'Gap at least', 500),
      lengthField('coupling.gapMaxMm', 'Gap at most', 500),
      figureField('coupling.maxTorqueNm', 'Greatest torque', 'N·m', [0.1, 1_000_000]),
      lengthField('coupling.sheave.pitchDiameterMm', 'Motor sheave, pitch diameter', 3_000),
      yesNoField('coupling.sheave.changeable', 'Sheave can be changed'),
      lengthField('coupling.takeUpMm', 'Belt take-up', 1_000),
    ],
  },
  {
    title: 'Duty',
    aside: 'what the pump asks',
    fields: [
      choiceField('load.kind', 'Load', LOAD_WORDS),
      powerField('load.shaftKw', 'Shaft power at the pump', {
        hint: 'The greatest that lasts: coldest product, relief valve lifting.',
      }),
      figureField('load.atPumpRpm', 'At pump speed', 'rpm', [0.1, 24_000]),
      figureField('load.maxPumpRpm', 'Greatest pump speed', 'rpm', [0.1, 24_000]),
      figureField('load.flowTolerancePct', 'Flow may change by', '%', [0, 100]),
      figureField('load.breakawayPct', 'Breakaway, of the load torque', '%', [0, 1_000]),
      figureField('load.staticHeadPct', 'Static head, of the whole', '%', [0, 100]),
    ],
  },
  {
    title: 'Supply',
    fields: [
      textField('supply.name', 'Fed from', 80, { hint: 'MCC 2, way 14.' }),
      figureChoice('supply.phases', 'Phases', { 1: '1', 3: '3' }),
      figureField('supply.volts', 'Voltage', 'V', [1, 15_000]),
      figureField('supply.hertz', 'Frequency', 'Hz', [1, 400]),
      figureField('supply.measuredVolts', 'Voltage, measured', 'V', [1, 15_000]),
      figureField('supply.unbalancePct', 'Unbalance', '%', [0, 100]),
      choiceField('supply.start', 'Started', STARTED_WORDS),
      yesNoField('supply.directAllowed', 'Direct start is allowed'),
      figureField('supply.softStartLimitPct', 'Soft starter’s current limit', '%', [100, 1_000]),
      figureField('supply.overloadMinA', 'Overload dial from', 'A', [0.01, 5_000]),
      figureField('supply.overloadMaxA', 'Overload dial to', 'A', [0.01, 5_000]),
      choiceField('supply.overloadIn', 'Overload stands', DIAL_WORDS),
      figureField('supply.contactorA', 'Contactor', 'A', [0.01, 5_000]),
      figureField('supply.cableA', 'Cable', 'A', [0.01, 5_000]),
      figureField('supply.instantaneousTripA', 'Instantaneous trip', 'A', [0.01, 100_000]),
      figureField('supply.capacitorKvar', 'Capacitors at the motor', 'kvar', [0, 10_000]),
      figureField('supply.drive.ratedA', 'Drive rating', 'A', [0.01, 5_000]),
      figureField('supply.drive.overloadPct', 'Drive overload', '%', [100, 400]),
      figureField('supply.drive.outputVolts', 'Drive output', 'V', [1, 15_000]),
      figureField('supply.drive.baseHertz', 'Drive base frequency', 'Hz', [1, 400]),
      figureField('supply.drive.minHertz', 'Drive frequency from', 'Hz', [0.1, 400]),
      figureField('supply.drive.maxHertz', 'Drive frequency to', 'Hz', [0.1, 400]),
      figureField('supply.drive.cableM', 'Cable from the drive', 'm', [0, 2_000]),
      yesNoField('supply.drive.filter', 'Output filter'),
    ],
  },
  { title: 'Surroundings', aside: 'where they differ from the area’s', fields: SURROUNDINGS },
  {
    title: 'Needs',
    fields: [
      manyField('needs', 'The set uses', AUXILIARY_WORDS, 'none of these'),
      textField('note', 'Note', 2_000, { lines: 3 }),
    ],
  },
];

export const SET_FIELDS: readonly Field[] = SET_GROUPS.flatMap(({ fields }) => fields);
