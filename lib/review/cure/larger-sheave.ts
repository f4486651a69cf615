import { bearings } from '@/lib/matching/criteria/surroundings/bearings';
import type { ReviewCase } from '../review-case';
import type { Change } from './cure';

/** A motor sheave no smaller than the frame's least, with a pump sheave that keeps the ratio. */
export function largerSheave({ set, motor, context }: ReviewCase): Change[] {
  const found = bearings(set, motor, context);
  if (found === null || found.work === null || typeof found.need !== 'number') return [];
  const sheave = { ...set.coupling.sheave, pitchDiameterMm: found.need };
  return [{ what: found.work.what, hours: found.work.hours, set: { ...set, coupling: { ...set.coupling, sheave } } }];
}
