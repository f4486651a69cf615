import type { Problem } from '@/lib/plant/reading';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import type { PlateMotor, RatingInput } from './plate-reading';

/** Takes out what cannot be right and says why; fills in the poles where the speeds leave one number. */
export function plausible(
  ratings: readonly RatingInput[],
  motor: PlateMotor,
): { motor: PlateMotor; problems: Problem[] } {
  const problems: Problem[] = [];
  const checked = ratings.map((row, i): RatingInput => {
    const says = speedSays(row, motor.poles ?? null);
    if (says === null) return row;
    problems.push({ path: `ratings.${i}.rpm`, value: String(row.rpm), says });
    const { rpm: _, ...rest } = row;
    return rest;
  });
  const poles = motor.poles ?? polesOf(checked);
  return {
    motor: {
      ...(poles === null ? {} : { poles }),
      ...(checked.length === 0 ? {} : { ratings: checked }),
    },
    problems,
  };
}

function speedSays({ rpm, hertz }: RatingInput, poles: number | null): string | null {
  if (rpm == null || hertz == null) return null;
  if (poles !== null) {
    const field = synchronousSpeed(poles, hertz);
    if (rpm > field)
      return `is above ${figure(field)} rpm, the synchronous speed of ${poles} poles at ${figure(hertz)} Hz`;
    if (rpm < field * (1 - GREATEST_SLIP))
      return `is far below ${figure(field)} rpm, the synchronous speed of ${poles} poles at ${figure(hertz)} Hz`;
    return null;
  }
  const slower = 2 * Math.ceil((60 * hertz) / rpm);
  if (polesAt(rpm, hertz, GREATEST_SLIP).length > 0 || Number.isInteger((60 * hertz) / rpm)) return null;
  const fields = [slower - 2, slower]
    .filter((p) => p >= 2)
    .map((p) => `${figure(synchronousSpeed(p, hertz))} rpm with ${p} poles`);
  return `is not a full-load speed at ${figure(hertz)} Hz: a field turns at ${fields.join(' or ')}`;
}

/** One number of poles whose slip at every plated speed lies in (0, 15 %]; common practice, no source. */
function polesOf(ratings: readonly RatingInput[]): number | null {
  const each = ratings.flatMap(({ rpm, hertz }) =>
    rpm == null || hertz == null ? [] : [polesAt(rpm, hertz, USUAL_SLIP)],
  );
  const first = each[0]?.[0];
  return first !== undefined && each.every((all) => all.length === 1 && all[0] === first) ? first : null;
}

function polesAt(rpm: number, hertz: number, most: number): number[] {
  const found: number[] = [];
  for (let poles = 2; poles <= MOST_POLES; poles += 2) {
    const slip = 1 - rpm / synchronousSpeed(poles, hertz);
    if (slip > 0 && slip <= most) found.push(poles);
  }
  return found;
}

const USUAL_SLIP = 0.15;
const GREATEST_SLIP = 0.25; // NEMA design D reaches 15 to 25 per cent: MG 10 Table 2-1 (read in one text)
const MOST_POLES = 64;
