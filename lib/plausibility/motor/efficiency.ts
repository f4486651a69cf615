import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { doubtOfRows, type RowDoubt } from '../doubt-of-rows';

/**
 * Is there such an efficiency? In per cent. Above the highest class by more than a nominal step is hard to believe, half
 * its losses are not had. Not asked of a row without efficiency or power; without poles the best number of poles counts.
 */
export function efficiency(motor: Motor): Doubt | null {
  return doubtOfRows('efficiency', motor, (row) => ofRow(row, motor), { poles: motor.poles, kind: motor.kind });
}

function ofRow({ efficiencyPct: have, kw }: Rating, { poles, kind }: Motor): RowDoubt | null {
  if (have === null) return null;
  const figures = figuresOf({ eff: have, kw });
  const about = { cell: 'efficiencyPct', have, unit: '%', figures } as const;
  if (have <= 1)
    return {
      ...about,
      grade: 'wrong',
      expected: Number((have * 100).toPrecision(4)),
      says: `${figure(have, 3)} % would be lost but for one part in a hundred: as a share of one it is ${figure(have * 100)} %.`,
      cite: 'common practice, no source',
    };
  const best = kw === null ? null : bestOf(kw, poles, kind);
  if (best === null) return null;
  const lost = 100 - have;
  if (lost >= (100 - best.pct) * STEP) return null;
  return {
    ...about,
    grade: lost < (100 - best.pct) * HALF ? 'wrong' : 'doubtful',
    expected: best.pct,
    says: `100 − ${figure(have)} = ${figure(lost)} % of losses; the highest class loses ${figure(100 - best.pct, 1)} % at ${figure(kw as number)} kW${poles === null ? '' : ` and ${poles} poles`}: more than one nominal step better than any class.`,
    cite: best.cite,
  };
}

/** The highest class at either mains: IE4; at 60 Hz premium with a fifth of its losses less; in step another fifth less. */
function bestOf(kw: number, poles: number | null, kind: Motor['kind']): { pct: number; cite: string } | null {
  const isTabled = poles !== null && poles <= TABLED_POLES.length * 2;
  const of = isTabled ? [poles] : TABLED_POLES;
  const found = of.flatMap((each) => [
    ...some(nominalEfficiency('IE4', kw, each, 'enclosed'), 1),
    ...some(nominalEfficiency('premium', kw, each, 'enclosed'), A_CLASS),
    ...some(nominalEfficiency('premium', kw, each, 'open'), A_CLASS),
  ]);
  const [first] = found.sort((a, b) => b.pct - a.pct);
  if (first === undefined) return null;
  const isInStep = kind === 'permanent-magnet' || kind === 'reluctance';
  return isInStep ? { ...first, pct: 100 - (100 - first.pct) * A_CLASS } : first;
}

const some = (told: { pct: number; cite: string } | null, losses: number): { pct: number; cite: string }[] =>
  told === null
    ? []
    : [
        {
          pct: 100 - (100 - told.pct) * losses,
          cite: losses === 1 ? told.cite : `${told.cite}; the class above it loses a fifth less (from memory)`,
        },
      ];

const TABLED_POLES = [2, 4, 6, 8] as const;
/** From one class to the next a fifth of the losses goes (from memory). */
const A_CLASS = 0.8;
/** One step of the nominal efficiencies of NEMA MG 1 Table 12-10 is a tenth of the losses (from memory). */
const STEP = 0.9;
const HALF = 0.5;
