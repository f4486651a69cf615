import type { PackMotor, PackSet } from '@/lib/offline/pack';
import type { PlantInHand } from '@/lib/offline/plant-in-hand';
import { motor, set } from '../matching/easy';

export const packSet = (tag: string, more: Partial<PackSet> = {}): PackSet => {
  const { failed: _failed, ...rest } = set({ tag });
  return {
    ...{ id: `set ${tag}`, tag, code: `C${tag}`, service: null, area: null, criticality: null, pump: null, note: null },
    ...{ set: rest, faults: [], history: [], retired: false },
    ...more,
  };
};

export const packMotor = (number: string, more: Partial<PackMotor> = {}): PackMotor => ({
  ...{ id: `motor ${number}`, number, code: `C${number}`, maker: null, serial: null, condition: null, rewinds: null },
  ...{ place: 'on-shelf', setId: null, shelfId: 'shelf', store: 'Main', shelf: 'A1', motor: motor({ id: number }) },
  retired: false,
  ...more,
});

export const inSet = (tag: string): Partial<PackMotor> => ({
  ...{ place: 'in-set', setId: `set ${tag}`, shelfId: null, store: null, shelf: null },
});

export const plantOf = (sets: PackSet[], motors: PackMotor[]): PlantInHand => ({
  sets: new Map(sets.map((one) => [one.id, one])),
  motors: new Map(motors.map((one) => [one.id, one])),
});
