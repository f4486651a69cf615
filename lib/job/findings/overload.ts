import { figure } from '@/lib/units/figure';
import { OVERLOAD_CITE } from '../overload-setting';
import type { Predicted } from '../predicted';
import { found, type ReadingFinding } from '../reading-finding';

/** A dial is set by eye, to about one part in fifty. Common practice, no source. */
const BY_EYE = 1.02;

/** Is the overload set to the plate, or lower? In A, where the overload stands. */
export function overloadFinding(setA: number, { overload, amps }: Predicted): ReadingFinding {
  const { settingA, lineA, phaseA, where } = overload;
  const compared = { about: 'overload', have: setA, need: settingA, unit: 'A', cite: OVERLOAD_CITE } as const;
  if (lineA === null || phaseA === null)
    return found('check', compared, 'The plate’s amps at this voltage are not known: read them on the plate.');
  if (settingA === null)
    return setA > lineA * BY_EYE
      ? found(
          'check',
          { ...compared, need: lineA },
          `Above the plate’s ${figure(lineA)} A wherever the overload stands: set it lower.`,
        )
      : found(
          'check',
          compared,
          `${figure(lineA)} A if it stands in the line, ${figure(phaseA)} A in the delta: look in the starter which.`,
        );
  if (setA > settingA * BY_EYE)
    return found(
      'check',
      compared,
      `Above the plate’s ${figure(settingA)} A: it lets the motor burn before it trips. Set it lower.`,
    );
  const runsAt = amps === null || where !== 'line' ? null : amps;
  if (runsAt !== null && setA < runsAt)
    return found(
      'note',
      compared,
      `Below the ${figure(runsAt)} A it is expected to run at: it will trip on the greatest duty.`,
    );
  return found('ok', compared, 'Set to the plate or lower.');
}
