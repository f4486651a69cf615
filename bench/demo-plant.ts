import { type Motor, motor } from '@/lib/plant/motor';
import { type PumpSet, set } from '@/lib/plant/set';
import type { SiteMotor } from '@/lib/plausibility/site-motor';
import { harrowmere } from '../seed/plant/harrowmere';

const plant = harrowmere('2026-11-25');
const motors = new Map(plant.motors.map(({ number, plate }) => [number, motor.parse({ id: number, ...plate })]));

export const demoMotors = (): Motor[] => [...motors.values()];

/** The demo's sets, each with the motor in it. */
export const demoSets = (): PumpSet[] =>
  plant.sets.map(({ input, motor: number }) => ({
    ...set.parse(input),
    failed: number === null ? null : (motors.get(number) ?? null),
  }));

/** The demo's motors among each other. */
export const demoSite = (): SiteMotor[] =>
  plant.motors.map(({ number, maker, serial, place }) => ({
    id: number,
    number,
    maker,
    serial,
    place: typeof place === 'string' ? place : 'set' in place ? `in ${place.set}` : `on ${place.shelf}`,
  }));
