import type { Context } from '@/lib/matching/context';
import type { Finding } from '@/lib/matching/finding';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { type Quantity, readingOf } from './quantity';

/** What lies under each foot in the end: the shims present and what the motor is lower by. Null: it has no feet here. */
export function shims(set: PumpSet, { base }: Context, findings: readonly Finding[]): Quantity | null {
  const { height, stackMm, addMm, isTransition } = base;
  if (height === 'not-asked') return null;
  const name = isTransition
    ? 'Transition base'
    : height === 'above-shims'
      ? 'Ground block under each foot'
      : 'Shims under each foot';
  const quantity = (value: string | null, detail: string | null): Quantity => ({ id: 'shims', name, value, detail });
  const present = set.base.shimsPresentMm;
  if (addMm === null || height === 'unknown' || height === 'too-high')
    return quantity(null, readingOf(findings, 'shaft-height'));
  if (height === 'same' && !isTransition)
    return present === null
      ? quantity(null, 'The same height: as many as lie there')
      : quantity(mm(present), 'as they lie there');
  if (present === null || stackMm === null)
    return quantity(null, `${mm(addMm)} more than lie there: measure the shims under each foot of the old motor`);
  if (isTransition || height === 'above-shims') return quantity(mm(stackMm), `in place of ${mm(present)} of shims`);
  const change = addMm > 0 ? `${mm(addMm)} more` : `${mm(-addMm)} less`;
  return quantity(mm(Math.max(0, stackMm)), `${mm(present)} there, ${change}`);
}

const mm = (value: number) => `${figure(value)} mm`;
