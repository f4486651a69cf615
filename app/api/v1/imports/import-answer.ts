import type { Actor } from '@/lib/auth/may';
import { importById } from '@/lib/register/queries/imports';

/** An import as it is answered; null: the site has none such. */
export async function importAnswerOf(actor: Actor, id: string): Promise<object | null> {
  const run = await importById(actor, id);
  if (run === null) return null;
  const { runId, fileName, kind, status, says, counts, dialect, columns, changeId } = run;
  const { format, encoding, delimiter, decimal, sheet } = dialect;
  return {
    ...{ id: runId, fileName, kind, status, says, counts, changeId },
    written: format === undefined ? null : { format, encoding, delimiter, decimal, sheet },
    columns: (columns?.columns ?? []).map(({ index, heading, field, unit, because, examples }) => ({
      ...{ index, heading, field, unit, because, examples },
    })),
  };
}
