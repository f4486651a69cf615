import type { Motor } from '@/lib/plant/motor';
import { frameName as readName } from '@/lib/standards/frame-name';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';

/** Is it a frame that NEMA or IEC knows, and of these poles? Not asked without a frame. */
export function frameName(motor: Motor): Doubt | null {
  const { frame, poles } = motor;
  if (frame === null) return null;
  const { system } = motorDimensions(motor);
  const read = readName(frame, { system });
  if (!read.ok) {
    // "56" and "225" are frames of both systems: which of them is a question, not a doubt.
    if (readName(frame, { system: 'NEMA' }).ok || readName(frame, { system: 'IEC' }).ok) return null;
    return doubtful(
      frame,
      `Frame ${frame}${read.problems.map(({ says }) => (IS_CLAIM.test(says) ? ` ${says}` : `: ${says}`)).join(';')}.`,
    );
  }
  if (read.value.name.system === null)
    return doubtful(frame, `${frame} is a flange alone: the frame beside it is not told.`);
  if (poles === null || read.value.poles === null || read.value.poles === poles) return null;
  return {
    rule: 'frame-name',
    thing: 'motor',
    grade: 'wrong',
    field: 'poles',
    have: poles,
    expected: read.value.poles,
    unit: null,
    says: `Frame ${frame} names ${read.value.poles} poles, and the plate is told to have ${poles}.`,
    cite: 'two words on one thing',
    figures: figuresOf({ frame, poles }),
  };
}

const doubtful = (frame: string, says: string): Doubt => ({
  rule: 'frame-name',
  thing: 'motor',
  grade: 'doubtful',
  field: 'frame',
  have: frame,
  expected: null,
  unit: null,
  says,
  cite: CITE,
  figures: figuresOf({ frame }),
});

/** Some problems say what the frame is, some are sentences of their own. */
const IS_CLAIM = /^(is|has|names|could|says)\b/;
const CITE = 'NEMA MG 1-2016 4.2 and IEC 60072-1 frame designations';
