import type { Motor } from '@/lib/plant/motor';
import { frameName } from '@/lib/standards/frame-name';
import type { NemaFrameName } from '@/lib/standards/frame-text';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { polesOfSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import { hpOfKw } from '@/lib/units/power';
import type { Doubt } from '../doubt';
import { iecAssigned, iecStep, nemaAssigned, nemaStep } from '../frame-steps';

/**
 * Does the frame go with power and poles? A frame far smaller than the standard assigns cannot hold the motor; one far
 * larger is only odd. Not asked without frame, power or poles, nor of two-speed and permanent-magnet motors, which no
 * standard assigns.
 */
export function frameSize(motor: Motor): Doubt | null {
  const { frame, kind } = motor;
  if (frame === null || kind === 'two-speed' || kind === 'permanent-magnet') return null;
  const read = frameName(frame, { system: motorDimensions(motor).system });
  const power = powerOf(motor);
  if (!read.ok || read.value.name.system === null || power === null) return null;
  const { name } = read.value;
  if (name.system === 'IEC') return ofIec(frame, name.height, power);
  return name.generation === 'small' ? ofSmall(frame, name, power) : ofNema(frame, name, power);
}

interface Power {
  kw: number;
  poles: number;
  /** As it stands on the plate. */
  words: string;
}

/** The row at 60 Hz where there is one: the NEMA assignment is for it, and the IEC one keeps its frame there. */
function powerOf({ ratings, poles: told }: Motor): Power | null {
  const rows = ratings.filter(({ kw }) => kw !== null);
  const row = rows.find(({ hertz }) => hertz === 60) ?? rows[0];
  if (!row || row.kw === null) return null;
  const poles = told ?? (row.rpm === null || row.hertz === null ? null : polesOfSpeed(row.rpm, row.hertz));
  if (poles === null) return null;
  return { kw: row.kw, poles, words: row.hp === null ? `${figure(row.kw)} kW` : `${figure(row.hp)} hp` };
}

function ofNema(frame: string, { numbers, generation }: NemaFrameName, power: Power): Doubt | null {
  const step = nemaStep(Math.max(...numbers));
  const assigned = nemaAssigned(power.kw, power.poles);
  if (step === null || assigned === null) return null;
  const small = assigned.least - step;
  const printed = assigned.frames.join(' or ');
  if (small >= NEMA_STEPS.doubtful) {
    const grade = small >= NEMA_STEPS.wrong ? 'wrong' : 'doubtful';
    return doubt(frame, power, grade, printed, `${small} sizes larger`, PART_13);
  }
  // The frames before 1964 are larger by design, and their assignments are not carried here.
  const large = step - assigned.most;
  if (generation !== 'T' || large < NEMA_STEPS.large) return null;
  return doubt(frame, power, 'doubtful', printed, `${large} sizes smaller`, PART_13);
}

function ofIec(frame: string, height: number, power: Power): Doubt | null {
  const step = iecStep(height);
  const assigned = iecAssigned(power.kw, power.poles);
  if (step === null || assigned === null) return null;
  const small = assigned.least - step;
  const printed = assigned.frames.join(' or ');
  if (small >= IEC_STEPS.doubtful) {
    const grade = small >= IEC_STEPS.wrong ? 'wrong' : 'doubtful';
    return doubt(frame, power, grade, printed, `${small} shaft heights larger`, EN_50347);
  }
  const large = step - assigned.most;
  return large >= IEC_STEPS.large
    ? doubt(frame, power, 'doubtful', printed, `${large} shaft heights smaller`, EN_50347)
    : null;
}

/** Part 13 assigns nothing to 42, 48 and 56: the most that is sold in them. */
function ofSmall(frame: string, { numbers }: NemaFrameName, power: Power): Doubt | null {
  const most = SMALL_HP.get(numbers[0] as number);
  const hp = hpOfKw(power.kw);
  if (most === undefined || hp <= most * ROUNDED) return null;
  const grade = hp > most * FAR ? 'wrong' : 'doubtful';
  return doubt(frame, power, grade, null, `at most ${figure(most)} hp in frame ${numbers[0]}`, PRACTICE);
}

function doubt(
  frame: string,
  { kw, poles, words }: Power,
  grade: Doubt['grade'],
  expected: string | null,
  apart: string,
  cite: string,
): Doubt {
  const says =
    expected === null
      ? `${words} stands on frame ${frame}: ${apart}.`
      : `${words} with ${poles} poles stands on frame ${frame}; the standard assigns ${expected}, ${apart}.`;
  const figures = figuresOf({ frame, kw, poles });
  return {
    rule: 'frame-size',
    thing: 'motor',
    grade,
    field: 'frame',
    have: frame,
    expected,
    unit: null,
    says,
    cite,
    figures,
  };
}

/** One size smaller is sold as a strong motor; two is a whole shaft height. */
const NEMA_STEPS = { doubtful: 2, wrong: 4, large: 4 };
/** One shaft height smaller is the progressive output of many makers. */
const IEC_STEPS = { doubtful: 2, wrong: 3, large: 3 };
const SMALL_HP = new Map([
  [42, 0.75],
  [48, 1.5],
  [56, 3],
]);
const ROUNDED = 1.02;
const FAR = 2.5;
const PART_13 = 'NEMA MG 1-2016 Part 13; how far apart: common practice, no source';
const EN_50347 = 'EN 50347 output assignment; how far apart: common practice, no source';
const PRACTICE = 'common practice, no source';
