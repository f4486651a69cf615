import type { Doubt } from '@/lib/plausibility/doubt';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { doubtsOfSet } from '@/lib/plausibility/doubts-of-set';
import { type MotorRow, motorOfRow } from '../motor-row';
import { type SetRow, setOfRow } from '../set-row';

/** Doubts of one record under one version: a record that did not change is not judged again. Oldest dropped first. */
const KEPT = 60_000;
const kept = new Map<string, readonly Doubt[]>();

interface Version {
  id: string;
  version: number;
}

export const keyOfMotor = (siteId: string, { id, version }: Version): string => `motor ${siteId} ${id} ${version}`;

/** A set is judged with its supply and the motor in it: each has a version of its own. The area has no part in it. */
export const keyOfSet = (
  siteId: string,
  { id, version, supply, motor }: Version & { supply: { version: number } | null; motor: Version | null },
): string => `set ${siteId} ${id} ${version} ${supply?.version ?? '-'} ${motor?.id ?? '-'} ${motor?.version ?? '-'}`;

export const doubtsKept = (key: string): readonly Doubt[] | null => kept.get(key) ?? null;

export function doubtsOfMotorRow(row: MotorRow): readonly Doubt[] {
  return keptOr(keyOfMotor(row.siteId, row), () => doubtsOfMotor(motorOfRow(row)));
}

export function doubtsOfSetRow(row: SetRow): readonly Doubt[] {
  return keptOr(keyOfSet(row.siteId, row), () => {
    const set = setOfRow(row);
    return doubtsOfSet(set, set.failed);
  });
}

function keptOr(key: string, make: () => readonly Doubt[]): readonly Doubt[] {
  const before = kept.get(key);
  if (before) return before;
  const made = make();
  if (kept.size >= KEPT) for (const oldest of kept.keys()) if (kept.delete(oldest)) break;
  kept.set(key, made);
  return made;
}
