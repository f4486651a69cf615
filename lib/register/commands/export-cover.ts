import { type Actor, must } from '@/lib/auth/may';
import type { CoverFilter, CoverMotorFilter } from '../cover-filter';
import { coverOfMotors, type MotorLine } from '../queries/cover-of-motors';
import { type CoveredLine, coverOfSets } from '../queries/cover-of-sets';
import { recordExport } from './export-step';

/** As many rows as one file has. */
const WHOLE = { page: 1, perPage: 100_000 };

/** The cover of the sets asked for; that it went out is in the audit. */
export async function exportCoverOfSets(actor: Actor, filter: CoverFilter): Promise<CoveredLine[]> {
  must(actor, 'register.export');
  const { lines } = await coverOfSets(actor, filter, WHOLE);
  await recordExport(actor, { kind: 'cover of sets', rows: lines.length });
  return lines;
}

/** The same by shelf motor. */
export async function exportCoverOfMotors(actor: Actor, filter: CoverMotorFilter): Promise<MotorLine[]> {
  must(actor, 'register.export');
  const { lines } = await coverOfMotors(actor, filter, null, WHOLE);
  await recordExport(actor, { kind: 'cover of shelf motors', rows: lines.length });
  return lines;
}
