import { classificationField } from './classification-field';
import {
  choiceField,
  dateField,
  type Field,
  figureChoice,
  figureField,
  lengthField,
  manyField,
  massField,
  temperatureField,
  textField,
} from './field';
import { AUXILIARY_WORDS, ENCLOSED_WORDS, KIND_WORDS, SIDE_WORDS, TURN_WORDS, WINDING_WORDS } from './plate-words';
import { stampedField } from './stamped-field';

export interface FieldGroup {
  title: string;
  aside?: string;
  fields: readonly Field[];
}

const asIs = (values: readonly string[]) => Object.fromEntries(values.map((value) => [value, value]));

/** Who made it and what it is called: the head of a plate. */
export const MOTOR_HEAD: readonly Field[] = [
  textField('id', 'Plant number', 60),
  textField('maker', 'Maker', 80),
  textField('serial', 'Serial number', 60),
];

/** A plate's fields below its ratings, in the order in which plates have them. */
export const MOTOR_GROUPS: readonly FieldGroup[] = [
  {
    title: 'Frame and form',
    fields: [
      textField('frame', 'Frame', 40, { hint: 'As stamped: 184TC, 112M.' }),
      textField('mounting', 'Mounting', 40, { hint: 'As stamped: IM B35, F-1.' }),
      choiceField('kind', 'Kind', KIND_WORDS),
      figureChoice('phases', 'Phases', { 1: '1', 3: '3' }),
      figureField('poles', 'Poles', null, [2, 64]),
      figureField('leads', 'Leads', null, [2, 24]),
      choiceField('winding', 'Winding', WINDING_WORDS),
      choiceField('terminalBox', 'Terminal box', SIDE_WORDS),
      choiceField('rotation', 'Turns', TURN_WORDS),
    ],
  },
  {
    title: 'Service',
    fields: [
      figureField('serviceFactor', 'Service factor', null, [1, 2]),
      stampedField('design', 'Design letter', 'DESIGN'),
      stampedField('codeLetter', 'Code letter', 'CODE'),
      figureField('lockedRotorPct', 'Locked-rotor torque', '%', [1, 600]),
      figureField('breakdownPct', 'Breakdown torque', '%', [1, 800]),
      stampedField('insulation', 'Insulation class', 'INS CL'),
      temperatureField('ambientC', 'Ambient'),
      stampedField('duty', 'Duty', 'DUTY', { hint: 'S1 is continuous.' }),
    ],
  },
  {
    title: 'Enclosure and place',
    fields: [
      stampedField('enclosure', 'Enclosure', 'ENCL', { hint: 'As stamped: TEFC, TENV.' }),
      stampedField('ip', 'IP code', 'IP', { hint: 'IP55; X where the plate shows no digit.' }),
      choiceField('washdown', 'Washdown', ENCLOSED_WORDS),
      classificationField('classification', 'Area mark', { atPlace: false }),
    ],
  },
  {
    title: 'On a drive',
    fields: [
      choiceField('driveDuty', 'Duty on a drive', asIs(['none', 'general', 'inverter'])),
      figureField('constantTorqueRange', 'Constant torque range, to 1', null, [1, 10_000]),
      figureField('maxRpm', 'Greatest speed', 'rpm', [1, 30_000]),
    ],
  },
  {
    title: 'What it has',
    fields: [
      manyField('has', 'Auxiliaries', AUXILIARY_WORDS, 'none of these'),
      figureField('brake.torqueNm', 'Brake torque', 'N·m', [0.1, 100_000]),
      figureField('brake.volts', 'Brake coil', 'V', [1, 1_000]),
      massField('massKg', 'Mass'),
      lengthField('lengthMm', 'Length over all', 10_000),
    ],
  },
];

/** What a tape tells; it wins over the frame. */
export const MOTOR_MEASURED: FieldGroup = {
  title: 'Measured',
  aside: 'wins over the frame’s standard',
  fields: [
    lengthField('measured.shaftHeightMm', 'Shaft height', 1_000),
    lengthField('measured.holesAcrossMm', 'Holes across', 2_000),
    lengthField('measured.holesAlongMm', 'Holes along', 2_000),
    lengthField('measured.holeMm', 'Foot hole', 100),
    lengthField('measured.holeToShoulderMm', 'Holes to shoulder', 1_000),
    lengthField('measured.shaftDiameterMm', 'Shaft diameter', 300),
    lengthField('measured.shaftLengthMm', 'Shaft length', 600),
    lengthField('measured.keyWidthMm', 'Key width', 100),
    lengthField('measured.pitchCircleMm', 'Pitch circle', 2_000),
    lengthField('measured.spigotMm', 'Spigot', 2_000),
    lengthField('measured.faceDiameterMm', 'Face diameter', 2_500),
  ],
};

/** What is known of the machine itself, beside its plate. */
export const MOTOR_STATE: FieldGroup = {
  title: 'As a machine',
  fields: [
    textField('condition', 'Condition', 200),
    figureField('rewinds', 'Rewound, times', null, [0, 50]),
    dateField('spare.shelvedOn', 'On the shelf since'),
    dateField('spare.testedOn', 'Tested on'),
    figureField('spare.insulationMohm', 'Insulation resistance', 'MΩ', [0, 1_000_000]),
    textField('note', 'Note', 2_000, { lines: 3 }),
    textField('unread', 'On the plate, not understood', 4_000, { lines: 3 }),
  ],
};

export const MOTOR_FIELDS: readonly Field[] = [
  ...MOTOR_HEAD,
  ...MOTOR_GROUPS.flatMap(({ fields }) => fields),
  ...MOTOR_MEASURED.fields,
  ...MOTOR_STATE.fields,
];
