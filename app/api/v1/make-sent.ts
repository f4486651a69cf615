import type { z } from 'zod';
import type { Actor } from '@/lib/auth/may';
import { type Problem, read } from '@/lib/plant/reading';
import type { OnceWork } from '@/lib/register/commands/once';
import { valueSent } from './json-sent';
import { onceSent } from './once-sent';
import { problem } from './problem';

/** What was made, as it is answered; or why it was not. */
export type MakeOutcome =
  | { outcome: 'refused'; problems: readonly Problem[] }
  | { outcome: 'made'; body: object; location?: string; tag?: string };

/** Makes what was sent, once under its Idempotency-Key. */
export async function makeSent<S extends z.ZodObject>(
  request: Request,
  actor: Actor,
  { body: { schema, types } }: { body: { schema: S; types: readonly string[] } },
  title: string,
  make: (tx: Parameters<OnceWork>[0], told: z.output<S>, sent: Record<string, unknown>) => Promise<MakeOutcome>,
): Promise<Response> {
  const sent = await valueSent(request, types);
  if (sent instanceof Response) return sent;
  const told = read(schema, sent.value);
  if (!told.ok) return problem(422, title, told.problems);
  return onceSent(request, actor, sent.text, async (tx) => {
    const made = await make(tx, told.value, sent.value as Record<string, unknown>);
    if (made.outcome === 'refused') return { status: 422, title, problems: made.problems };
    const { outcome: _, ...answered } = made;
    return { status: 201, ...answered };
  });
}

/** Problems of the only one of a list of records, each at its own key. */
export const ofTheOne = (problems: readonly Problem[]): Problem[] =>
  problems.map((one) => ({ ...one, path: one.path.replace(/^0\./, '') }));
