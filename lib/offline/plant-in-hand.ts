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

/** Takes in what changed, before anything is looked up: what is gone is forgotten. */
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

/** The set with this tag, in any case of letters; the very same letters first. */
export const setTagged = (plant: PlantInHand, tag: string): PackSet | null => named(indexOf(plant).setsByTag, tag);
/** The motor with this plant number, in any case of letters; the very same letters first. */
export const motorNumbered = (plant: PlantInHand, number: string): PackMotor | null =>
  named(indexOf(plant).motorsByNumber, number);

export const motorIn = (plant: PlantInHand, setId: string): PackMotor | null =>
  indexOf(plant).motorsBySet.get(setId) ?? null;

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

/** Every motor that might go into a set: those that wait, then those of less critical sets, the least critical first. */
export function candidatesInHand(plant: PlantInHand, asking: PackSet): Candidate[] {
  const { waiting, standing } = indexOf(plant);
  return [...waiting, ...standing.filter(({ stops }) => isSparable(asking.criticality, stops.criticality))];
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

type FromSet = Extract<Candidate, { from: 'set' }>;

/** What is looked up in a plant, put in order once. */
interface PlantIndex {
  setsByTag: Names<PackSet>;
  motorsByNumber: Names<PackMotor>;
  motorsBySet: Map<string, PackMotor>;
  /** Those on a shelf or on order, by their numbers. */
  waiting: Candidate[];
  /** Those in sets of a criticality that is told, the least critical first. */
  standing: FromSet[];
}

const indices = new WeakMap<PlantInHand, PlantIndex>();

/** A plant that has changed is another one. */
function indexOf(plant: PlantInHand): PlantIndex {
  const known = indices.get(plant);
  if (known !== undefined) return known;
  const motors = [...plant.motors.values()].sort(byNumber);
  const standing = motors.flatMap((one): FromSet[] => {
    const stops = stopsOf(plant, one);
    return stops === null ? [] : [{ from: 'set', motor: one.motor, stops }];
  });
  const index = {
    setsByTag: namesOf(plant.sets.values(), ({ tag }) => tag),
    motorsByNumber: namesOf(plant.motors.values(), ({ number }) => number),
    motorsBySet: new Map(
      [...plant.motors.values()].reverse().flatMap((one) => (one.setId === null ? [] : [[one.setId, one] as const])),
    ),
    waiting: motors
      .filter(({ place }) => place === 'on-shelf' || place === 'on-order')
      .map((one) => onShelf(plant, one)),
    // Stable: within a criticality they stay by their numbers.
    standing: standing.sort((a, b) => b.stops.criticality - a.stops.criticality),
  };
  indices.set(plant, index);
  return index;
}

/** By name, and by name in small letters; of several the first. */
interface Names<T> {
  exact: Map<string, T>;
  anyCase: Map<string, T>;
}

function namesOf<T>(all: Iterable<T>, nameOf: (one: T) => string): Names<T> {
  const names: Names<T> = { exact: new Map(), anyCase: new Map() };
  for (const one of all) {
    const name = nameOf(one);
    if (!names.exact.has(name)) names.exact.set(name, one);
    const small = name.toLowerCase();
    if (!names.anyCase.has(small)) names.anyCase.set(small, one);
  }
  return names;
}

function named<T>({ exact, anyCase }: Names<T>, name: string): T | null {
  const asked = name.trim();
  return exact.get(asked) ?? anyCase.get(asked.toLowerCase()) ?? null;
}

const byNumber = (a: PackMotor, b: PackMotor) => (a.number < b.number ? -1 : a.number > b.number ? 1 : 0);

const onShelf = (plant: PlantInHand, motor: PackMotor): Candidate => ({
  from: 'shelf',
  motor: motor.motor,
  at: whereaboutsInHand(plant, motor),
  condition: motor.condition,
  rewinds: motor.rewinds,
});
