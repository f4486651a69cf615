import { figuresOf } from '@/lib/units/figures-of';
import { alike, bareText, named, type OfMotor, type SiteMotor } from '../site-motor';

/** Is every motor kept once, in one place? Two plant numbers that read alike may be one motor in two places. */
export function twoPlaces(all: readonly SiteMotor[]): OfMotor[] {
  return alike(all, ({ number }) => folded(number)).flatMap((group) =>
    group.map((motor) => {
      const others = group.filter((one) => one !== motor);
      const isSame = others.some(({ number }) => bareText(number) === bareText(motor.number));
      return {
        id: motor.id,
        doubt: {
          rule: 'two-places',
          thing: 'motor',
          grade: isSame ? 'wrong' : 'doubtful',
          field: 'id',
          have: motor.number,
          expected: null,
          unit: null,
          says: `${motor.number} ${motor.place} reads like ${named(others)}: a motor is in one place.`,
          cite: 'a motor is in one place at a time',
          figures: figuresOf({
            number: motor.number,
            of: others
              .map(({ number }) => number)
              .sort()
              .slice(0, MOST_KEPT)
              .join('+'),
          }),
        },
      };
    }),
  );
}

/** O is 0, I is 1: what a hand writes alike. */
const folded = (number: string): string | null => bareText(number).replaceAll('O', '0').replaceAll('I', '1') || null;
const MOST_KEPT = 20;
