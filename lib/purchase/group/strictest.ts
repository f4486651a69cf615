import type { Classification } from '@/lib/plant/classification';
import { areaShortfall } from '@/lib/standards/area-order';
import { ipCovers } from '@/lib/standards/ip-covers';

/** The greatest of those that are known; null: none is. */
export const greatest = (values: readonly (number | null)[]): number | null => extreme(values, Math.max);
export const least = (values: readonly (number | null)[]): number | null => extreme(values, Math.min);

function extreme(values: readonly (number | null)[], of: (...values: number[]) => number): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : of(...known);
}

/** The last of `order` that is among them; null: none is known. */
export const strongest = <T>(values: readonly (T | null)[], order: readonly T[]): T | null =>
  order.findLast((one) => values.includes(one)) ?? null;

/**
 * A degree of protection that covers all of them, each numeral on its own (IEC 60529); `conflict` where none does: a motor
 * for jets and for immersion must be declared for both.
 */
export function strictestIp(codes: readonly string[]): string | null | 'conflict' {
  if (codes.length === 0) return null;
  const solids = codes.map((code) => code.slice(2, 3));
  const water = codes.map((code) => code.slice(3));
  const all = [...new Set(solids.flatMap((one) => water.map((other) => `IP${one}${other}`)))].sort();
  return all.find((code) => codes.every((need) => covers(code, need))) ?? 'conflict';
}

function covers(have: string, need: string): boolean {
  const { solids, water } = ipCovers(have, need);
  return solids === 'covers' && water === 'covers';
}

/** A mark that covers all of them on every axis; `conflict` where none of them does. */
export function strictestArea(marks: readonly Classification[]): Classification | null | 'conflict' {
  if (marks.length === 0) return null;
  return marks.find((mark) => marks.every((need) => areaShortfall(mark, need) === null)) ?? 'conflict';
}
