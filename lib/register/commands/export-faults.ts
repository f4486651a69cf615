import { type Actor, must } from '@/lib/auth/may';
import type { FaultAt } from '../fault-line';
import { type FaultFilter, faults } from '../queries/faults';
import { recordExport } from './export-step';

/** As many of the open and of the closed ones as one file has; the days of the question part what is more. */
const MOST = 20_000;

/** The faults of a question, open ones first; that they went out is in the audit. */
export async function exportFaults(actor: Actor, filter: FaultFilter): Promise<FaultAt[]> {
  must(actor, 'register.export');
  const { open, closed } = await faults(actor, filter, MOST);
  const after = { kind: 'faults', rows: open.length + closed.length };
  await recordExport(actor, after);
  return [...open, ...closed];
}
