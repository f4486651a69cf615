'use server';

import { redirect } from 'next/navigation';
import { answerAskOf, type Sent } from '@/app/answer-ask';
import type { AskState } from '@/app/ask-state';
import { oneLine, swapPath } from '@/app/paths';
import { AMPS_FIELDS, readingsOf, textsFrom, VALUE_NAMES } from '@/lib/job/reading-texts';
import { read } from '@/lib/plant/reading';
import { addReadings } from '@/lib/register/commands/add-readings';
import { readingsRequest } from '@/lib/register/commands/readings-request';

/** Keeps readings told after a swap and goes back to it. Refused, the form keeps what was typed. */
export async function addReadingsHere(_before: AskState, form: FormData): Promise<AskState> {
  const state = await answerAskOf(form, LABELS, 'swap.record', async (actor, sent) => {
    const { readings, problems } = readingsOf(textsSent(sent));
    const [problem] = problems;
    if (problem !== undefined)
      return { outcome: 'refused', problems: problems.map(({ path, says }) => ({ path, value: null, says })) };
    const request = read(readingsRequest, {
      ...{ key: oneLine(sent.one('key')), swapId: oneLine(sent.one('swapId')), readings, takenAt: null },
    });
    if (!request.ok) return { outcome: 'refused', problems: request.problems };
    const done = await addReadings(actor, request.value);
    return done.outcome === 'saved' ? { outcome: 'saved', says: swapPath(request.value.swapId) } : done;
  });
  if (state.outcome === 'saved') redirect(state.says);
  return state;
}

const textsSent = (sent: Sent) =>
  textsFrom(
    (name) => oneLine(sent.one(name)),
    (name) => sent.all(name).map(oneLine),
  );

const LABELS: Record<string, string> = {
  ...VALUE_NAMES,
  ...Object.fromEntries(AMPS_FIELDS.map((name, i) => [name, `Amps of L${i + 1}`])),
  ...{ ticked: 'The boxes', rotation: 'Rotation', readings: 'The form', key: 'The form', swapId: 'The swap' },
};
