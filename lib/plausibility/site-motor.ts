import type { Doubt } from './doubt';

/** A motor among all of its site. */
export interface SiteMotor {
  /** The record's own key. */
  id: string;
  number: string;
  maker: string | null;
  serial: string | null;
  /** Where it is, in words: "in SK-104", "on shelf A2". */
  place: string;
}

/** A doubt and the motor it is about. */
export interface OfMotor {
  id: string;
  doubt: Doubt;
}

/** Motors that share a key, each group of two or more. Null: no key. */
export function alike(all: readonly SiteMotor[], keyOf: (motor: SiteMotor) => string | null): SiteMotor[][] {
  const groups = new Map<string, SiteMotor[]>();
  for (const motor of all) {
    const key = keyOf(motor);
    if (key === null) continue;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [motor]);
    else group.push(motor);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

/** Capital letters and digits alone. */
export const bareText = (text: string): string => text.toUpperCase().replaceAll(/[^\p{L}\p{N}]/gu, '');

/** The others by number and place, the first few by name. */
export function named(others: readonly SiteMotor[]): string {
  const first = others.slice(0, MOST_NAMED).map(({ number, place }) => `${number} ${place}`);
  const rest = others.length - first.length;
  return `${first.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`;
}

const MOST_NAMED = 3;
