import { randomUUID } from 'node:crypto';
import type { Actor } from '@/lib/auth/may';
import { judge } from '@/lib/matching/assess';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { reportFault } from '@/lib/register/commands/report-fault';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { MENDED } from './plant/past';

/** One fault reported and mended as a technician would: the spare is judged, and the swap keeps the judgement. */
export async function mended(technician: Actor, today: string): Promise<void> {
  const { set: tag, says, motorIn, why } = MENDED;
  const known = await setByTag(technician, tag);
  const spare = await motorByNumber(technician, motorIn);
  const { settings } = await siteSettings(technician);
  if (!known?.row.motor || !spare) throw new Error(`The demonstration has no ${tag} with a motor, or no ${motorIn}.`);
  const reported = await reportFault(technician, { setId: known.row.id, seen: [], says });
  const { verdict, hours, findings, point } = judge(known.set, spare.motor, { settings, asOf: today });
  const swapped = await recordSwap(
    technician,
    {
      key: randomUUID(),
      setId: known.row.id,
      motorInId: spare.row.id,
      motorOutId: known.row.motor.id,
      fromSetId: null,
      outTo: { place: 'at-repair' },
      why,
      note: null,
      workDone: [],
      checks: findings.flatMap(({ criterion, grade, says: what }) =>
        grade === 'check' ? [{ criterion, says: what.slice(0, 500) }] : [],
      ),
      insulationMohm: 820,
      overloadA: null,
      shimsPresentMm: null,
      doneAt: null,
      readings: null,
    },
    { verdict, hours, findings, operatingPoint: point },
  );
  if (reported.outcome !== 'saved' || swapped.outcome !== 'saved')
    throw new Error(`The demonstration's own swap was refused: ${JSON.stringify({ reported, swapped })}`);
}
