import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { KeptSet } from './kept-plant/kept-plant';

const YEAR_MS = 365 * 86_400_000;

/** The faults told of these sets since they have been in the register, and how long that is, in years of one set. Whoever asks has asked `may`. */
export async function faultsSeen(
  { siteId }: Actor,
  sets: readonly KeptSet[],
): Promise<{ failures: number; years: number }> {
  const id = { in: sets.map(({ setId }) => setId) };
  const [faults, rows] = await Promise.all([
    db.fault.findMany({ where: { siteId, setId: id }, select: { setId: true, at: true } }),
    db.pumpSet.findMany({ where: { siteId, id }, select: { id: true, createdAt: true } }),
  ]);
  const since = new Map(rows.map((row) => [row.id, row.createdAt]));
  // A fault from before would count as seen in years that nobody counts.
  const isSeen = ({ setId, at }: (typeof faults)[number]) => at >= (since.get(setId) ?? at);
  const now = Date.now();
  return {
    failures: faults.filter(isSeen).length,
    years: rows.reduce((sum, { createdAt }) => sum + (now - createdAt.getTime()) / YEAR_MS, 0),
  };
}
