import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { polesOfSpeed, synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';
import { doubtOfRows, type RowDoubt } from '../doubt-of-rows';

/** Does the speed belong to the poles and the hertz? Speeds in rpm. Not asked of a row without speed or hertz. */
export function speed(motor: Motor): Doubt | null {
  // Each row of a two-speed plate may belong to another number of poles.
  const poles = motor.kind === 'two-speed' ? null : motor.poles;
  return doubtOfRows('speed', motor, (row) => (poles === null ? ofNoPoles(row) : ofPoles(row, poles, motor)), {
    poles,
    design: motor.design,
    kind: motor.kind,
  });
}

function ofPoles({ rpm, hertz, kw }: Rating, poles: number, { kind, design }: Motor): RowDoubt | null {
  if (rpm === null || hertz === null) return null;
  const field = synchronousSpeed(poles, hertz);
  const reckoned = `120 × ${figure(hertz)} Hz / ${poles} poles = ${figure(field, 1)} rpm`;
  const figures = figuresOf({ hertz, rpm, kw });
  const about = { cell: 'rpm', have: rpm, expected: field, unit: 'rpm', figures } as const;
  const stands = `${figure(rpm)} rpm stands on the plate`;
  if (rpm > field + ROUNDED_RPM)
    return { ...about, grade: 'wrong', says: `${reckoned}; ${stands}: faster than the field turns.`, cite: FIELD };

  const slip = 1 - rpm / field;
  const slips = `${reckoned}; ${stands}: ${figure(slip * 100, 1)} % of slip`;
  if (slip > GREATEST_SLIP)
    return {
      ...about,
      grade: 'wrong',
      says: `${slips}, more than any design has${elsewhere(rpm, hertz)}.`,
      cite: SLIP,
    };
  if (kind === 'permanent-magnet' || kind === 'reluctance')
    return slip > IN_STEP
      ? { ...about, grade: 'doubtful', says: `${slips}, and this kind runs in step with its field.`, cite: FIELD }
      : null;
  if (Math.abs(rpm - field) <= ROUNDED_RPM)
    return {
      ...about,
      grade: 'doubtful',
      says: `${reckoned}, and so much stands on the plate: a motor under load turns slower, unless it runs in step.`,
      cite: FIELD,
    };
  const usual = design === 'D' || kind === 'wound-rotor' || kw === null ? GREATEST_SLIP : usualSlip(kw);
  if (slip <= usual) return null;
  const says = `${slips}, where ${figure(usual * 100)} % is much for ${figure(kw as number)} kW${elsewhere(rpm, hertz)}.`;
  return { ...about, grade: 'doubtful', says, cite: BY_SIZE };
}

function ofNoPoles({ rpm, hertz }: Rating): RowDoubt | null {
  if (rpm === null || hertz === null) return null;
  const twoPole = synchronousSpeed(2, hertz);
  if (polesOfSpeed(rpm - ROUNDED_RPM, hertz) !== null) return null;
  const slower = 2 * Math.ceil((60 * hertz) / rpm);
  const says =
    rpm > twoPole
      ? `120 × ${figure(hertz)} Hz / 2 poles = ${figure(twoPole)} rpm; ${figure(rpm)} rpm is faster than any field turns.`
      : `${figure(rpm)} rpm is no full-load speed at ${figure(hertz)} Hz: ${slower} poles turn at ${figure((120 * hertz) / slower, 1)} rpm at most, ${slower - 2} poles slip at most ${GREATEST_SLIP * 100} % below ${figure((120 * hertz) / (slower - 2), 1)} rpm.`;
  const figures = figuresOf({ hertz, rpm });
  return { cell: 'rpm', grade: 'wrong', have: rpm, expected: null, unit: 'rpm', says, cite: SLIP, figures };
}

/** Where the speed would belong: other poles, or the other mains. */
function elsewhere(rpm: number, hertz: number): string {
  const poles = polesOfSpeed(rpm, hertz);
  const near = poles !== null && rpm >= synchronousSpeed(poles, hertz) * (1 - LIKELY_SLIP) ? poles : null;
  return near === null ? '' : `; it would be a speed of ${near} poles at ${figure(hertz)} Hz`;
}

/** The greatest slip that is customary for a size, doubled: seldom, not never. */
const usualSlip = (kw: number): number => SLIPS.find(({ upToKw }) => kw <= upToKw)?.slip ?? LARGE_SLIP;
const SLIPS = [
  { upToKw: 0.12, slip: 0.25 },
  { upToKw: 0.75, slip: 0.16 },
  { upToKw: 3, slip: 0.12 },
  { upToKw: 15, slip: 0.07 },
  { upToKw: 75, slip: 0.04 },
];
const LARGE_SLIP = 0.026;
const GREATEST_SLIP = 0.25;
const LIKELY_SLIP = 0.06;
const IN_STEP = 0.01;
/** Plates print whole revolutions: the 514.29 rpm of 14 poles is stamped 514. */
const ROUNDED_RPM = 0.5;

const FIELD = 'n = 120 f / p (read in two texts)';
const SLIP = 'NEMA MG 10 Table 2-1: at most 25 % of slip, design D (read in one text)';
const BY_SIZE = 'customary slip by size, doubled (from memory)';
