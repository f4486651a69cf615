import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';

export interface Cautions {
  title: string;
  says: string[];
}

/** What a person must heed at this set with this motor, by when it matters. Common practice, no source. */
export function cautionsFor(set: PumpSet, motor: Motor): Cautions[] {
  return [
    { title: 'Before the work', says: beforeWork(set, motor) },
    { title: 'Before power', says: beforePower(set, motor) },
    { title: 'Before restart', says: beforeRestart(set, motor) },
  ];
}

function beforeWork(set: PumpSet, motor: Motor): string[] {
  const feeds = secondFeeds(set, motor);
  return [
    `Isolate, lock out and prove dead, second feeds too: ${feeds.join(', ')}.`,
    ...(isDriveFed(set) ? ['Wait the drive’s discharge time, then prove its DC link dead.'] : []),
    'Relieve pressure and let it cool.',
    'Find why the old motor failed, and turn the pump by hand, before fitting another.',
    motor.massKg === null
      ? 'Lift by the mass on the plate, which is not in the register; an eyebolt lifts the motor alone.'
      : `Lift for ${motor.massKg} kg; an eyebolt lifts the motor alone.`,
  ];
}

function beforePower(set: PumpSet, motor: Motor): string[] {
  const apart = [
    isDriveFed(set) ? 'the drive disconnected' : null,
    has(motor, 'thermistor') || set.needs.includes('thermistor') ? 'thermistors shorted' : null,
  ].filter((part) => part !== null);
  return [
    `Measure the insulation resistance${apart.length === 0 ? '' : `, ${apart.join(' and ')}`}.`,
    'Align, and check for soft foot.',
    ...(isDriveFed(set) ? ['Enter the new plate in the drive.'] : []),
    'Set the overload to the plate, or lower where pump or gear limits it.',
    rotationCaution(set),
    'Area-classified and electrical work is for licensed or competent people, to local codes.',
  ];
}

function rotationCaution({ coupling, load }: PumpSet): string {
  const backwards =
    load.kind === 'constant-torque'
      ? ' A rotary pump run backwards loses its relief protection; never bump a progressing-cavity pump dry.'
      : '';
  return coupling.type === 'close-coupled' || coupling.input === 'quill' || coupling.input === 'pump-shaft'
    ? `The coupling cannot be split here: check rotation by phase-rotation meter and lead marks.${backwards}`
    : `Check rotation with the coupling split, the key removed or held, the guard on.${backwards}`;
}

const beforeRestart = (set: PumpSet, _motor: Motor): string[] => [
  'Valves open, relief in service, guard and earth bond on, interlocks working.',
  ...(set.surroundings.washdown === true ? ['Hygiene release: tools and shims counted.'] : []),
  'Bedplate proposes; a competent person decides.',
];

const isDriveFed = ({ supply }: PumpSet) => supply.start === 'drive';
const has = ({ has }: Motor, auxiliary: 'thermistor' | 'heater' | 'brake') => has?.includes(auxiliary) === true;

function secondFeeds({ needs, failed }: PumpSet, motor: Motor): string[] {
  const either = (auxiliary: 'heater' | 'brake') =>
    needs.includes(auxiliary) || has(motor, auxiliary) || (failed !== null && has(failed, auxiliary));
  return [either('heater') ? 'heater' : null, either('brake') ? 'brake' : null, 'control'].filter(
    (feed) => feed !== null,
  );
}
