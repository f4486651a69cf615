import type { Motor } from '@/lib/plant/motor';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import { hpOfKw } from '@/lib/units/power';
import type { Doubt } from '../doubt';

/** Can the motor have these phases? Single-phase motors end at a size; a kind and its phases must agree. */
export function phases({ phases: have, kind, winding, ratings }: Motor): Doubt | null {
  if (have === null) return null;
  const about = { rule: 'phases', thing: 'motor', field: 'phases', have, unit: null } as const;
  if (kind === 'single-phase' && have === 3)
    return {
      ...about,
      grade: 'wrong',
      expected: 1,
      says: 'The kind is single-phase, and 3 phases stand on the plate.',
      cite: 'two words on one thing',
      figures: figuresOf({ phases: have, kind }),
    };
  if (have === 3) return null;
  if (winding !== null)
    return {
      ...about,
      grade: 'wrong',
      expected: 3,
      says: `1 phase stands on the plate, and a ${winding} winding, which has three.`,
      cite: 'IEC 60034-8 and NEMA MG 1 Part 2: lead markings of three-phase windings',
      figures: figuresOf({ phases: have, winding }),
    };
  const powers = ratings.flatMap(({ kw }) => kw ?? []);
  const greatest = Math.max(...powers);
  if (powers.length === 0 || hpOfKw(greatest) <= LARGEST_HP * ROUNDED) return null;
  return {
    ...about,
    grade: 'doubtful',
    expected: 3,
    says: `1 phase at ${figure(greatest)} kW = ${figure(hpOfKw(greatest), 1)} hp: single-phase motors end at ${LARGEST_HP} hp.`,
    cite: 'NEC Table 430.248 ends at 10 hp (read in two texts)',
    figures: figuresOf({ phases: have, kw: greatest }),
  };
}

const LARGEST_HP = 10;
const ROUNDED = 1.02;
