import { severalLines } from '@/app/form-text';
import { oneLine } from '@/app/paths';
import { readingsOf, textsFrom } from '@/lib/job/reading-texts';
import { isTold, type Readings } from '@/lib/job/readings';
import { readNumber } from '@/lib/units/read-number';
import type { FormProblem, SwapValues } from './swap-state';

/** The quantities of the form; null where nothing was typed, or nothing that could be read. */
export interface SwapQuantities {
  shimsPresentMm: number | null;
  /** Null where nothing was read or ticked. */
  readings: Readings | null;
}

/** What was typed and ticked, as it stands. */
export function valuesOf(form: FormData): SwapValues {
  const one = (name: string) => oneLine(textOf(form.get(name)));
  const many = (name: string) => form.getAll(name).map((value) => oneLine(textOf(value)));
  return {
    key: one('key'),
    why: one('why'),
    whyWords: one('whyWords'),
    outTo: one('outTo'),
    shelfId: one('shelfId'),
    workDone: many('workDone'),
    checks: many('checks'),
    readings: textsFrom(one, many),
    shimsPresentMm: one('shimsPresentMm'),
    note: severalLines(textOf(form.get('note'))).trim(),
    stops: one('stops'),
  };
}

/** Reads the quantities as people write them, with every problem at once. */
export function quantitiesOf(values: SwapValues): { quantities: SwapQuantities; problems: FormProblem[] } {
  const { readings, problems } = readingsOf(values.readings);
  const shims = values.shimsPresentMm === '' ? null : readNumber(values.shimsPresentMm, { min: 0, max: 100 });
  if (shims !== null && !shims.ok)
    for (const { says } of shims.problems)
      problems.push({ path: 'shimsPresentMm', says: `Shims: “${values.shimsPresentMm}” ${says}.` });
  const shimsPresentMm = shims === null || !shims.ok ? null : shims.value;
  return { quantities: { shimsPresentMm, readings: isTold(readings) ? readings : null }, problems };
}

const textOf = (value: FormDataEntryValue | null) => (typeof value === 'string' ? value : '');
