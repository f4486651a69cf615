import type { Prisma } from '@/lib/db/generated/client';
import { readLabelCode } from '@/lib/plant/label-code';
import { normOf } from '@/lib/plant/look-alike';
import type { PLACES } from '@/lib/plant/whereabouts';
import { literal } from './literal';

export const MOTOR_SORTS = ['number', 'frame', 'place', 'changed'] as const;

/** Which motors a list shows, in which order; null: whatever. */
export interface MotorFilter {
  /** Words of plant number, maker, serial and frame, or a label's code. */
  q: string | null;
  place: (typeof PLACES)[number] | null;
  shelfId: string | null;
  volts: number | null;
  poles: number | null;
  isRetired: boolean;
  sort: (typeof MOTOR_SORTS)[number];
  isDown: boolean;
}

export const ALL_MOTORS: MotorFilter = {
  ...{ q: null, place: null, shelfId: null, volts: null, poles: null, isRetired: false },
  ...{ sort: 'number', isDown: false },
};

export function whereMotors(siteId: string, filter: MotorFilter): Prisma.MotorWhereInput {
  const { q, place, shelfId, volts, poles, isRetired } = filter;
  const words =
    q === null
      ? []
      : q
          .split(/\s+/)
          .filter((word) => word !== '')
          .slice(0, 8);
  const has = (word: string) => ({ contains: literal(word), mode: 'insensitive' as const });
  return {
    siteId,
    retiredAt: isRetired ? { not: null } : null,
    ...(place !== null && { place }),
    ...(shelfId !== null && { shelfId }),
    ...((volts !== null || poles !== null) && {
      nameplate: {
        ...(poles !== null && { poles }),
        ...(volts !== null && {
          ratings: { some: { OR: [{ volts }, { voltsMin: { lte: volts }, voltsMax: { gte: volts } }] } },
        }),
      },
    }),
    AND: words.map((word) => ({
      OR: [
        { plantNumber: has(word) },
        ...(normOf(word) === '' ? [] : [{ norm: { contains: normOf(word) } }]),
        ...labelled(word),
        { maker: has(word) },
        { serial: has(word) },
        { nameplate: { frame: has(word) } },
        { set: { tag: has(word) } },
      ],
    })),
  };
}

export function orderMotors({ sort, isDown }: MotorFilter): Prisma.MotorOrderByWithRelationInput[] {
  const way = isDown ? 'desc' : 'asc';
  switch (sort) {
    case 'number':
      return [{ plantNumber: way }];
    case 'frame':
      return [{ nameplate: { frame: { sort: way, nulls: 'last' } } }, { plantNumber: 'asc' }];
    case 'place':
      return [{ place: way }, { plantNumber: 'asc' }];
    case 'changed':
      return [{ changedAt: way }, { plantNumber: 'asc' }];
  }
}

/** A word that is a label code means what carries it. */
function labelled(word: string) {
  const read = readLabelCode(word);
  return read.ok ? [{ code: read.value }] : [];
}
