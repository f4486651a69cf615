import { unstable_rethrow } from 'next/navigation';
import type { Action, Actor } from '@/lib/auth/may';
import { isDatabaseGone } from '@/lib/db/database-gone';
import type { Problem } from '@/lib/plant/reading';
import type { AskState, Typed } from './ask-state';
import { refusedByRole } from './refused-by-role';
import { whoDoes } from './who-is-here';

export type Done =
  | { outcome: 'saved'; says: string }
  | { outcome: 'told'; says: string; secret: string }
  | { outcome: 'refused'; problems: Problem[] };

/** What was sent under a name: the one value, or all of them. */
export interface Sent {
  one: (name: string) => string;
  all: (name: string) => string[];
}

/**
 * Answers a form of a few fields. `labels` names every field that may come, each as a sentence about it begins; any
 * other is refused. What was typed stays, whatever comes of it.
 */
export async function answerAsk(
  form: FormData,
  labels: Record<string, string>,
  work: (sent: Sent) => Promise<Done | null>,
): Promise<AskState> {
  const sent: Sent = {
    one: (name) => textOf(form.get(name)),
    all: (name) => form.getAll(name).map(textOf),
  };
  const typed: Typed = Object.fromEntries(
    Object.keys(labels).map((name) => [name, NEVER_REPEATED.includes(name) ? [] : sent.all(name)]),
  );
  const refused = (problems: { path: string; says: string }[]): AskState => ({ outcome: 'refused', problems, typed });
  // Names that begin with a dollar are Next's own.
  const unknown = [...new Set(form.keys())].filter((name) => !name.startsWith('$') && !(name in labels));
  if (unknown.length > 0) return refused([{ path: 'form', says: 'The form had a field that does not belong to it.' }]);
  try {
    const done = await work(sent);
    if (done === null) return { outcome: 'signed-out', typed };
    if (done.outcome !== 'refused') return done;
    return refused(
      done.problems.map(({ path, says }) => {
        const name = path.split('.')[0] ?? path;
        return { path: name, says: `${labels[name] ?? 'This'} ${says}.` };
      }),
    );
  } catch (error) {
    unstable_rethrow(error);
    if (isDatabaseGone(error)) return { outcome: 'away', typed };
    const says = refusedByRole(error);
    if (says === null) throw error;
    return refused([{ path: 'form', says }]);
  }
}

/** The same for a form of signed-in people whose role allows `action`. */
export const answerAskOf = (
  form: FormData,
  labels: Record<string, string>,
  action: Action,
  work: (actor: Actor, sent: Sent) => Promise<Done>,
): Promise<AskState> =>
  answerAsk(form, labels, async (sent) => {
    const actor = await whoDoes(action);
    return actor === null ? null : work(actor, sent);
  });

const NEVER_REPEATED = ['password', 'old', 'link'];

/** The database takes no NUL, and no id or name has one. A password keeps every character but that. */
const textOf = (value: FormDataEntryValue | null) => (typeof value === 'string' ? value.replaceAll('\u0000', '') : '');
