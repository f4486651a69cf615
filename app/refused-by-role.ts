import { NotAllowed } from '@/lib/auth/may';
import { answerStatus } from './answer-status';

/** What a form tells, with 403, whose sender's role may not do it; null for any other failure. */
export function refusedByRole(error: unknown): string | null {
  if (!(error instanceof NotAllowed)) return null;
  answerStatus(403);
  return 'Your role here does not allow it. Nothing was done.';
}
