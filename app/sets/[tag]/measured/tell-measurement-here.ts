'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { answerAskOf, type Done } from '@/app/answer-ask';
import type { AskState } from '@/app/ask-state';
import { severalLines } from '@/app/form-text';
import { timeOfDay } from '@/app/moment';
import { measuredPath } from '@/app/paths';
import { MEASURED_FIELDS, readMeasured } from '@/lib/energy/read-measured';
import { tellMeasurement } from '@/lib/register/commands/tell-measurement';
import { setTag } from '@/lib/register/queries/set-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';

const LABELS: Record<string, string> = {
  ...{ key: 'The page', setId: 'The set', day: 'The day', time: 'The time', note: 'The note', figures: 'The figures' },
  ...Object.fromEntries(MEASURED_FIELDS.map(({ name, label }) => [name, label])),
};

/** Keeps what was read at a set, and goes back to its measurements. Refused, it keeps what was typed. */
export const tellMeasurementHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, LABELS, 'set.measure', async (actor, { one }): Promise<Done> => {
    const setId = one('setId');
    const [{ timezone }, tag] = await Promise.all([siteSettings(actor), setTag(actor, setId)]);
    const read = readMeasured(one);
    const at = timeOfDay(one('day').trim(), one('time').trim(), timezone);
    const note = severalLines(one('note')).trim();
    if (at === null || !read.ok) {
      const when = at === null ? [{ path: 'time', value: one('time').slice(0, 40), says: NO_TIME }] : [];
      return { outcome: 'refused', problems: [...(read.ok ? [] : read.problems), ...when] };
    }
    const done = await tellMeasurement(actor, {
      ...{ key: one('key'), setId, at, figures: read.value, note: note === '' ? null : note },
    });
    if (done.outcome === 'refused')
      return { ...done, problems: done.problems.map((one) => (one.path === 'at' ? { ...one, path: 'time' } : one)) };
    revalidatePath('/', 'layout');
    redirect(tag === null ? '/sets' : `${measuredPath(tag)}?measured=kept`);
  });

const NO_TIME = 'and the day must be such as 2026-04-30 and 14:05';
