import type { Prisma } from '@/lib/db/generated/client';
import { readLabelCode } from '@/lib/plant/label-code';
import { normOf } from '@/lib/plant/look-alike';
import { literal } from './literal';

export const SET_SORTS = ['tag', 'area', 'criticality', 'changed'] as const;
export const SET_CONDITIONS = ['failed', 'empty', 'retired'] as const;

/** Which sets a list shows, in which order; null: whatever. */
export interface SetFilter {
  /** Words of tag, service, area and pump, or a label's code. */
  q: string | null;
  areaId: string | null;
  criticality: number | null;
  condition: (typeof SET_CONDITIONS)[number] | null;
  volts: number | null;
  sort: (typeof SET_SORTS)[number];
  isDown: boolean;
}

export const ALL_SETS: SetFilter = {
  ...{ q: null, areaId: null, criticality: null, condition: null, volts: null },
  ...{ sort: 'tag', isDown: false },
};

export function whereSets(
  siteId: string,
  { q, areaId, criticality, condition, volts }: SetFilter,
): Prisma.PumpSetWhereInput {
  const words =
    q === null
      ? []
      : q
          .toLowerCase()
          .split(/\s+/)
          .filter((word) => word !== '')
          .slice(0, 8);
  return {
    siteId,
    retiredAt: condition === 'retired' ? { not: null } : null,
    ...(areaId !== null && { areaId }),
    ...(criticality !== null && { criticality }),
    ...(volts !== null && { supply: { volts } }),
    ...(condition === 'failed' && { faults: { some: { closedAt: null } } }),
    ...(condition === 'empty' && { motor: null }),
    AND: words.map((word) => ({
      OR: [
        { words: { contains: literal(word) } },
        ...(normOf(word) === '' ? [] : [{ norm: { contains: normOf(word) } }]),
        ...labelled(word),
        { motor: { plantNumber: { contains: literal(word), mode: 'insensitive' as const } } },
      ],
    })),
  };
}

export function orderSets({ sort, isDown }: SetFilter): Prisma.PumpSetOrderByWithRelationInput[] {
  const way = isDown ? 'desc' : 'asc';
  switch (sort) {
    case 'tag':
      return [{ tag: way }];
    case 'area':
      return [{ area: { name: way } }, { tag: 'asc' }];
    case 'criticality':
      return [{ criticality: { sort: way, nulls: 'last' } }, { tag: 'asc' }];
    case 'changed':
      return [{ changedAt: way }, { tag: 'asc' }];
  }
}

/** A word that is a label code means what carries it. */
function labelled(word: string) {
  const read = readLabelCode(word);
  return read.ok ? [{ code: read.value }] : [];
}
