import { type Edit, type State, stateOf } from '@/lib/fields/state';
import type { Draft } from '@/lib/import/draft';
import type { MotorInput } from '@/lib/plant/motor';
import type { NewMotor } from '../commands/register-motors';
import type { NewSet } from '../commands/register-sets';
import type { MotorPlace } from '../motor-columns';

/** A set that is new to the register, from its row. */
export function newSet({ key, set }: Draft, areaId: string | null): NewSet {
  const { set: told, area: _a, pump, ...about } = set ?? { set: {} };
  return {
    ...about,
    areaId,
    ...(pump?.description !== undefined && { pump: { ...pump, description: pump.description } }),
    set: { ...(told as NewSet['set']), tag: String(key) },
  };
}

/** A motor that is new to the register, from its row. */
export function newMotor({ motor }: Draft, number: string, at: MotorPlace): NewMotor {
  const { motor: told, place: _p, store: _s, shelf: _h, ...about } = motor ?? { motor: {} };
  return { ...about, motor: { ...(told as MotorInput), id: number }, at };
}

/** The number of a motor whose row has none: its set's tag with an M, and a figure where that is taken. */
export function numberFor(tag: string, isTaken: (number: string) => boolean): string {
  const plain = `M-${tag}`.slice(0, 56);
  for (let i = 1; ; i += 1) {
    const number = i === 1 ? plain : `${plain}-${i}`;
    if (!isTaken(number)) return number;
  }
}

/** A retired record that a row tells anew comes back as the row has it: what it had before and the row lacks is gone. */
export const broughtBack = (retired: State, told: State): Edit => ({
  ...Object.fromEntries(Object.keys(retired).map((path) => [path, null])),
  ...told,
});

export const stateOfSet = ({ set, supplyName, ...about }: NewSet): State =>
  stateOf({ ...set, ...about, ...(set.supply && { supply: { ...set.supply, name: supplyName } }) });

export const stateOfMotor = ({ motor, at, ...about }: NewMotor): State => stateOf({ ...motor, ...about, ...at });
