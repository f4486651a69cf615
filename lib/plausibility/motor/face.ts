import type { Motor } from '@/lib/plant/motor';
import type { FrameDimensions } from '@/lib/standards/dimension';
import { dimensionsOf } from '@/lib/standards/dimensions-of';
import { frameName } from '@/lib/standards/frame-name';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { mountingCode } from '@/lib/standards/mounting-code';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt } from '../doubt';

/**
 * Has it the face its frame names, and no other? The letters of a NEMA frame tell its face (C, D, JM ...): a mounting code
 * that says otherwise, or a face measured that is not the frame's, is one of two wrong things.
 */
export function face(motor: Motor): Doubt | null {
  return byLetters(motor) ?? byTape(motor);
}

function byLetters(motor: Motor): Doubt | null {
  const { frame, mounting } = motor;
  if (frame === null || mounting === null) return null;
  const read = frameName(frame, { system: motorDimensions(motor).system });
  const held = mountingCode(mounting);
  if (!read.ok || !held.ok || read.value.name.system !== 'NEMA') return null;
  const { name } = read.value;
  if (name.hasSpecialMounting) return null;
  const hasFace = name.face !== null || name.isJetPump;
  const isClash = held.value.hasFace === null ? held.value.face === 'none' && hasFace : held.value.hasFace !== hasFace;
  if (!isClash) return null;
  return {
    rule: 'face',
    thing: 'motor',
    grade: 'wrong',
    field: 'mounting',
    have: mounting,
    expected: null,
    unit: null,
    says: hasFace
      ? `Frame ${frame} names a face by its letters, and mounting ${held.value.name} has none.`
      : `Mounting ${held.value.name} has a face, and frame ${frame} names none, as ${name.frame}C would.`,
    cite: 'NEMA MG 1-2016 4.2.2: letters of the frame',
    figures: figuresOf({ frame, mounting }),
  };
}

function byTape(motor: Motor): Doubt | null {
  const { frame, mounting, poles, measured } = motor;
  const { system } = motorDimensions(motor);
  const told = dimensionsOf(frame, { mounting, poles, system });
  return (
    one(motor, told, 'pitchCircleMm', 'Pitch circle', measured.pitchCircleMm) ??
    one(motor, told, 'spigotMm', 'Spigot', measured.spigotMm)
  );
}

function one(
  { frame, mounting }: Motor,
  { face: standard, holding }: FrameDimensions,
  key: 'pitchCircleMm' | 'spigotMm',
  words: string,
  have: number | null,
): Doubt | null {
  if (have === null) return null;
  const about = { rule: 'face', thing: 'motor', field: `measured.${key}`, have, unit: 'mm' } as const;
  const figures = figuresOf({ frame, mounting, [key]: have });
  if (holding.face === false) {
    const says = `${words} of ${figure(have)} mm was measured, and frame ${frame} has no face.`;
    return { ...about, grade: 'doubtful', expected: null, says, cite: 'two words on one thing', figures };
  }
  const expected = standard?.[key] ?? null;
  if (standard === null || expected === null || Math.abs(have - expected) <= TAPE_MM) return null;
  const says = `${figure(have)} − ${figure(expected)} = ${figure(have - expected)} mm: the ${words.toLowerCase()} measured is not that of ${standard.name}.`;
  return { ...about, grade: 'doubtful', expected, says, cite: standard.cite, figures };
}

/** A tape over a bolt circle is good to a millimetre or two (common practice, no source). */
const TAPE_MM = 2;
