import type { Motor } from '@/lib/plant/motor';
import { readFrame } from '@/lib/standards/dimensions-of';
import { frameName } from '@/lib/standards/frame-name';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { mountingCode } from '@/lib/standards/mounting-code';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';

/** Does the mounting code say what the frame says? Not asked without a code. Of a NEMA frame's letters: rule `face`. */
export function mounting(motor: Motor): Doubt | null {
  const { frame, mounting: told } = motor;
  if (told === null || told.trim() === '') return null;
  const about = {
    rule: 'mounting',
    thing: 'motor',
    field: 'mounting',
    have: told,
    expected: null,
    unit: null,
    figures: figuresOf({ frame, mounting: told }),
  } as const;
  const code = mountingCode(told);
  if (!code.ok) {
    const says = `Mounting ${told} ${code.problems.map((one) => one.says).join('; ')}.`;
    return { ...about, grade: 'doubtful', says, cite: CODES };
  }
  const { system } = motorDimensions(motor);
  const name = frame === null ? null : frameName(frame, { system });
  if (frame === null || !name?.ok || name.value.name.system !== 'IEC') return null;
  const read = readFrame(frame, { mounting: told, system });
  const problem = read.ok ? undefined : read.problems.find(({ path }) => path === 'mounting');
  if (problem === undefined) return null;
  return {
    ...about,
    grade: 'wrong',
    says: `Mounting ${code.value.name} ${problem.says}: frame ${frame}.`,
    cite: CODES,
  };
}

const CODES = 'IEC 60034-7 mounting codes, IEC 60072-1 flanges';
