import { figuresOf } from '@/lib/units/figures-of';
import { alike, bareText, named, type OfMotor, type SiteMotor } from '../site-motor';

/** Does a serial number of one maker stand on one motor only? Not asked without maker and serial number. */
export function serial(all: readonly SiteMotor[]): OfMotor[] {
  return alike(all, keyOf).flatMap((group) =>
    group.map((motor) => {
      const others = group.filter((one) => one !== motor);
      return {
        id: motor.id,
        doubt: {
          rule: 'serial',
          thing: 'motor',
          grade: 'wrong',
          field: 'serial',
          have: motor.serial,
          expected: null,
          unit: null,
          says: `${motor.maker} ${motor.serial} stands on ${motor.number} ${motor.place} and on ${named(others)}: one of them is another, or it is one motor kept twice.`,
          cite: 'a maker gives a serial number once (common practice, no source)',
          figures: figuresOf({ serial: keyOf(motor), of: numbersOf(group) }),
        },
      };
    }),
  );
}

function keyOf({ maker, serial: told }: SiteMotor): string | null {
  if (maker === null || told === null) return null;
  const bare = bareText(told);
  // "n/a", "unknown" and "0000" are no serial numbers.
  if (bare.length < SHORTEST || !/\p{N}/u.test(bare) || /^(.)\1*$/u.test(bare)) return null;
  return `${bareText(maker)} ${bare}`;
}

const numbersOf = (group: readonly SiteMotor[]) =>
  group
    .map(({ number }) => number)
    .sort()
    .slice(0, MOST_KEPT)
    .join('+');

const SHORTEST = 4;
const MOST_KEPT = 20;
