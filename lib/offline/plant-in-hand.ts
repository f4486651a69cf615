import type { Candidate, Unoffered } from '@/lib/matching/offer/candidate';
import { isSparable } from '@/lib/matching/offer/candidate';
import type { PumpSet } from '@/lib/plant/set';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import type { PackMotor, PackSet } from './pack';

/** The sets and motors of one site, by id: what a pack was unpacked into. */
export interface PlantInHand {
  sets: Map<string, PackSet>;
  motors: Map<string, PackMotor>;
}

/** Takes in what changed: what is gone is forgotten. Answers the ids that are no longer as they were. */
export function takeIn(plant: PlantInHand, changed: { sets: readonly PackSet[]; motors: readonly PackMotor[] }) {
  put(plant.sets, changed.sets);
  put(plant.motors, changed.motors);
}

function put<T extends { id: string; retired: boolean }>(held: Map<string, T>, changed: readonly T[]) {
  for (const one of changed) {
    if (one.retired) held.delete(one.id);
    else held.set(one.id, one);
  }
}

const sameText = (a: string, b: string) => a === b || a.toLowerCase() === b.toLowerCase();

/** The set with this tag, in any case of letters; the very same letters first. */
export const setTagged = ({ sets }: PlantInHand, tag: string): PackSet | null => named([...sets.values()], tag, 'tag');
/** The motor with this plant number, in any case of letters; the very same letters first. */
export const motorNumbered = ({ motors }: PlantInHand, number: string): PackMotor | null =>
  named([...motors.values()], number, 'number');

function named<K extends string, T extends Record<K, string>>(all: readonly T[], name: string, key: K): T | null {
  const asked = name.trim();
  return all.find((one) => one[key] === asked) ?? all.find((one) => sameText(one[key], asked)) ?? null;
}

export const motorIn = ({ motors }: PlantInHand, setId: string): PackMotor | null => {
  for (const one of motors.values()) if (one.setId === setId) return one;
  return null;
};

/** The set as the judgement takes it: the motor now in it is the failed one. */
export const setInHand = (plant: PlantInHand, { id, set }: PackSet): PumpSet => ({
  ...set,
  failed: motorIn(plant, id)?.motor ?? null,
});

export function whereaboutsInHand({ sets }: PlantInHand, motor: PackMotor): Whereabouts {
  return {
    motorId: motor.id,
    plantNumber: motor.number,
    place: motor.place,
    setTag: motor.setId === null ? null : (sets.get(motor.setId)?.tag ?? null),
    store: motor.store,
    shelf: motor.shelf,
  };
}

const byNumber = (a: PackMotor, b: PackMotor) => (a.number < b.number ? -1 : a.number > b.number ? 1 : 0);

/** Every motor that might go into a set: those that wait, then those of less critical sets, the least critical first. */
export function candidatesInHand(plant: PlantInHand, asking: PackSet): Candidate[] {
  const motors = [...plant.motors.values()].sort(byNumber);
  const waiting = motors.filter(({ place }) => place === 'on-shelf' || place === 'on-order');
  const standing = motors.flatMap((motor) => {
    const stops = stopsOf(plant, motor);
    return stops !== null && isSparable(asking.criticality, stops.criticality) ? [{ motor, stops }] : [];
  });
  standing.sort((a, b) => b.stops.criticality - a.stops.criticality || byNumber(a.motor, b.motor));
  return [
    ...waiting.map((motor) => onShelf(plant, motor)),
    ...standing.map(({ motor, stops }): Candidate => ({ from: 'set', motor: motor.motor, stops })),
  ];
}

/** One motor as a candidate for a set, and why it cannot be taken; null: it can. */
export function candidateInHand(
  plant: PlantInHand,
  asking: PackSet,
  motor: PackMotor,
): { candidate: Candidate; unoffered: Unoffered | null } {
  const here = onShelf(plant, motor);
  switch (motor.place) {
    case 'on-shelf':
    case 'on-order':
      return { candidate: here, unoffered: null };
    case 'at-repair':
    case 'scrapped':
      return { candidate: here, unoffered: motor.place };
    case 'in-set': {
      if (motor.setId === asking.id) return { candidate: here, unoffered: 'in-this-set' };
      const stops = stopsOf(plant, motor);
      if (stops === null || !isSparable(asking.criticality, stops.criticality))
        return { candidate: here, unoffered: 'in-critical-set' };
      return { candidate: { from: 'set', motor: motor.motor, stops }, unoffered: null };
    }
  }
}

function stopsOf({ sets }: PlantInHand, { setId }: PackMotor) {
  const set = setId === null ? undefined : sets.get(setId);
  if (set === undefined || set.criticality === null) return null;
  return { setId: set.id, tag: set.tag, service: set.service, criticality: set.criticality };
}

const onShelf = (plant: PlantInHand, motor: PackMotor): Candidate => ({
  from: 'shelf',
  motor: motor.motor,
  at: whereaboutsInHand(plant, motor),
  condition: motor.condition,
  rewinds: motor.rewinds,
});
