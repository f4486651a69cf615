import type { Tx } from '@/lib/db/client';
import type { Going, Names } from './row-changes';

/** Plant numbers that a motor without one may not be given: those in the register and those of the rows in hand. */
export async function takenNumbers(
  tx: Tx,
  siteId: string,
  going: readonly Going[],
): Promise<Pick<Names, 'isTaken' | 'take'>> {
  const untold = going.filter(({ draft }) => draft.motor !== null && draft.motor.motor.id === undefined);
  const starts = untold.map(({ draft }) => `M-${draft.key}`.slice(0, 56));
  const rows =
    starts.length === 0
      ? []
      : await tx.$queryRaw<{ number: string }[]>`
          SELECT plant_number AS number FROM motor WHERE site_id = ${siteId}::uuid
          AND EXISTS (SELECT 1 FROM unnest(${starts}::text[]) AS s WHERE starts_with(plant_number, s))`;
  const taken = new Set([
    ...rows.map(({ number }) => number),
    ...going.flatMap(({ draft }) => draft.motor?.motor.id ?? []),
  ]);
  return { isTaken: (number) => taken.has(number), take: (number) => void taken.add(number) };
}
