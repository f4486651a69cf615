import type { PumpSet } from '@/lib/plant/set';
import { PHASE_SHARE } from '../starting/phase-share';

/** Plate amps that the set's equipment carries, and what would be too small for more. */
export interface MostAmps {
  amps: number;
  of: 'contactor' | 'cable' | 'drive';
}

/** A cable carries the plate's amps with a quarter to spare: NEC 430.22 (from memory). */
const CABLE_MARGIN = 1.25;

/**
 * The most full-load amps in the line that contactor, cable and drive carry; null where none of them is told. A dial that
 * does not reach is not counted: another overload is work, another contactor is a new starter.
 */
export function mostAmps({ supply }: PumpSet): MostAmps | null {
  const { contactorA, cableA, drive, start, overloadIn } = supply;
  // The contactor that the delta hangs on carries a leg's share of the line.
  const isInLeg = start === 'star-delta' && overloadIn === 'phase';
  const limits: MostAmps[] = [];
  if (contactorA !== null) limits.push({ amps: isInLeg ? contactorA / PHASE_SHARE : contactorA, of: 'contactor' });
  if (cableA !== null) limits.push({ amps: cableA / CABLE_MARGIN, of: 'cable' });
  if (start === 'drive' && drive !== null && drive.ratedA !== null) limits.push({ amps: drive.ratedA, of: 'drive' });
  return limits.reduce<MostAmps | null>((least, one) => (least === null || one.amps < least.amps ? one : least), null);
}
