import { INSULATION_CITE, leastInsulationMohm } from '@/lib/standards/least-insulation';
import { figure } from '@/lib/units/figure';
import type { Predicted } from '../predicted';
import { found, type ReadingFinding } from '../reading-finding';

/** The least of the two rules holds for every winding, the greatest clears every one: volts of a small and a large one. */
const [SMALL_V, LARGE_V] = [1, 15_000];

/** Is the winding fit to be put to power? In MΩ, a one-minute reading brought to 40 °C. */
export function insulationFinding(mohm: number, { windingVolts }: Predicted): ReadingFinding {
  const least = leastInsulationMohm(windingVolts ?? SMALL_V);
  const most = leastInsulationMohm(LARGE_V);
  const compared = {
    about: 'insulation',
    have: mohm,
    need: least,
    unit: 'MΩ',
    cite: `${INSULATION_CITE}, at 40 °C`,
  } as const;
  if (least === null || most === null) return found('check', { ...compared, need: null }, 'No least value is known.');
  if (mohm < least)
    return found(
      'block',
      compared,
      `Below ${figure(least)} MΩ: do not put it to power. Dry the winding or take another motor.`,
    );
  if (windingVolts === null && mohm < most)
    return found(
      'check',
      { ...compared, need: null },
      `The winding’s volts are not known: ${figure(least)} MΩ is enough below 1 kV, ${figure(most)} MΩ above. Read the volts on the plate.`,
    );
  return found('ok', compared, 'Enough to put it to power.');
}
