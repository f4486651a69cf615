import { frequency } from '@/lib/matching/criteria/supply/frequency';
import { phases } from '@/lib/matching/criteria/supply/phases';
import { voltage } from '@/lib/matching/criteria/supply/voltage';
import { isWorse } from '@/lib/matching/finding';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';
import { urgencyOf } from '../urgency-of';

/**
 * Is the motor plated for the phases, volts and hertz it is fed with, on a drive for the drive's output? The worst of the
 * three is told, the others with it.
 */
export function supply({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const answers = [phases, voltage, frequency].flatMap((ask) => ask(set, motor, context) ?? []);
  const wrong = answers.filter((one) => urgencyOf(one) !== null);
  const [first, ...rest] = wrong;
  if (first === undefined) return null;
  const worst = rest.reduce((so, one) => (isWorse(one.grade, so.grade) ? one : so), first);
  const others = wrong.filter((one) => one !== worst).map(({ says }) => says);
  const { have, need, unit, says, cite, reading } = worst;
  return raised({
    ...{ rule: 'supply', urgency: urgencyOf(worst) ?? 'plan', have, need, unit, cite, reading },
    says: [says, ...others].join(' '),
    figures: {
      ...{ phases: set.supply.phases, volts: context.row.volts, hertz: context.row.hertz },
      ...{
        ofMotor: motor.phases,
        plateVolts: context.row.plate?.volts ?? null,
        plateHertz: context.row.plate?.hertz ?? null,
      },
      unbalancePct: set.supply.unbalancePct,
    },
  });
}
