'use server';

import { revalidatePath } from 'next/cache';
import { answerAskOf, type Done } from '@/app/answer-ask';
import type { AskState } from '@/app/ask-state';
import { signedNumber } from '@/app/signed-number';
import { read } from '@/lib/plant/reading';
import { repairFigures } from '@/lib/plant/repair-figures';
import { endRepair } from '@/lib/register/commands/end-repair';
import { tellRepair } from '@/lib/register/commands/tell-repair';
import { FIGURE_LABELS, FIGURES } from './repair-fields';

const LABELS = {
  ...{ repairId: 'The repair', version: 'The repair', isRewind: 'What is renewed', decision: 'The decision' },
  ...{ why: 'Why', ...FIGURE_LABELS },
};

/** Keeps the figures and the decision of a repair. */
export const tellRepairHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, LABELS, 'repair.decide', async (actor, { one }): Promise<Done> => {
    const told: Record<string, unknown> = { isRewind: one('isRewind') === '' ? null : one('isRewind') === 'yes' };
    for (const { name, min, max } of FIGURES) {
      const typed = one(name).trim();
      if (typed === '') continue;
      const figure = signedNumber(typed, { min, max });
      if (!figure.ok)
        return { outcome: 'refused', problems: figure.problems.map((problem) => ({ ...problem, path: name })) };
      told[name] = figure.value;
    }
    const figures = read(repairFigures, told);
    if (!figures.ok) return { outcome: 'refused', problems: figures.problems };
    const decision = one('decision');
    const done = await tellRepair(actor, {
      ...{ repairId: one('repairId'), version: Number(one('version')), figures: figures.value },
      decision: decision === 'repair' || decision === 'scrap' ? decision : null,
      why: one('why').trim() === '' ? null : one('why').trim(),
    });
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    return { outcome: 'saved', says: 'The figures and the decision are kept.' };
  });

/** The motor is back on a shelf, or scrapped. */
export const endRepairHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(
    form,
    { motorId: 'The motor', to: 'Where it goes' },
    'motor.move',
    async (actor, { one }): Promise<Done> => {
      const to = one('to');
      const done = await endRepair(actor, {
        motorId: one('motorId'),
        to: to === 'scrapped' ? { place: 'scrapped' } : { place: 'on-shelf', shelfId: to },
      });
      if (done.outcome === 'refused') return done;
      revalidatePath('/', 'layout');
      return { outcome: 'saved', says: 'The motor’s new place is kept, and its repair has ended.' };
    },
  );
