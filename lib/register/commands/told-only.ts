import type { Prisma } from '@/lib/db/generated/client';

/** A group as it is kept: what is not known is left out, so that a later key is not known either. */
export function toldOnly(group: object): Prisma.InputJsonObject {
  const told = Object.entries(group).flatMap(([key, value]) => {
    if (value === null || value === undefined) return [];
    if (typeof value !== 'object' || Array.isArray(value)) return [[key, value]];
    const inner = toldOnly(value);
    return Object.keys(inner).length === 0 ? [] : [[key, inner]];
  });
  return Object.fromEntries(told) as Prisma.InputJsonObject;
}
