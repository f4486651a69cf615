import { objectOf, type State, stateOf } from '@/lib/fields/state';
import type { NewMotor } from '@/lib/register/commands/register-motors';
import type { NewSet } from '@/lib/register/commands/register-sets';
import type { MotorPlace } from '@/lib/register/motor-columns';

type Json = Record<string, unknown>;

/** A record as the API tells it: the state's fields as one object, the supply's name beside the supply. */
export function recordOf(state: State): Json {
  const { retiredAt: _r, supply, ...rest } = objectOf(state);
  if (supply === undefined) return rest;
  const { name, ...fed } = supply as Json;
  return {
    ...rest,
    ...(Object.keys(fed).length > 0 && { supply: fed }),
    ...(name !== undefined && { supplyName: name }),
  };
}

/** The way back. */
function stateOfRecord({ supplyName, ...rest }: Json): State {
  if (supplyName == null) return stateOf(rest);
  return stateOf({ ...rest, supply: { ...(rest.supply as Json | undefined), name: supplyName } });
}

/**
 * A record with a patch made to it (RFC 7396): null takes a key out. One key is told by its null, as in the contract: a
 * place that a person says is unclassified.
 */
export function patched(state: State, patch: Json): State {
  const { retiredAt } = state;
  const made = stateOfRecord(merged(recordOf(state), bareText(patch), '') as Json);
  return retiredAt === undefined ? made : { ...made, retiredAt };
}

function merged(target: unknown, patch: unknown, path: string): unknown {
  if (!isObject(patch)) return patch;
  const made: Json = isObject(target) ? { ...target } : {};
  for (const [key, value] of Object.entries(patch)) {
    const inner = path === '' ? key : `${path}.${key}`;
    if (value === null && inner !== 'surroundings.classification') delete made[key];
    else if (value === null) made[key] = null;
    else
      Object.defineProperty(made, key, {
        value: merged(made[key], value, inner),
        enumerable: true,
        writable: true,
        configurable: true,
      });
  }
  return made;
}

/** Texts without the blanks around them, as their schemas take them. */
export function bareText<T>(sent: T): T {
  if (typeof sent === 'string') return sent.trim() as T;
  if (Array.isArray(sent)) return sent.map(bareText) as T;
  if (!isObject(sent)) return sent;
  return Object.fromEntries(Object.entries(sent).map(([key, value]) => [key, bareText(value)])) as T;
}

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A set to be entered, from what was sent; its schema has read it. */
export function newSetOf(sent: Json): NewSet {
  const { service, criticality, areaId, pump, supplyName, note, ...set } = bareText(sent) as Json & NewSet;
  return { service, criticality, areaId, pump, supplyName, note, set: set as unknown as NewSet['set'] } as NewSet;
}

/** A motor to be entered, from what was sent. */
export function newMotorOf(sent: Json): NewMotor {
  const { maker, serial, condition, rewinds, note, unread, place, setId, shelfId, ...motor } = bareText(sent);
  const at = { place, ...(setId != null && { setId }), ...(shelfId != null && { shelfId }) };
  return { maker, serial, condition, rewinds, note, unread, at: at as MotorPlace, motor } as unknown as NewMotor;
}
