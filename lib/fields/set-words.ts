import type { PumpSet } from '@/lib/plant/set';

type Of<T> = NonNullable<T> & string;

export const HELD_WORDS: Record<PumpSet['mounting'], string> = {
  foot: 'feet',
  face: 'its face',
  'foot-and-face': 'feet and face',
};
export const COUPLED_WORDS: Record<Of<PumpSet['coupling']['type']>, string> = {
  coupling: 'coupling',
  'close-coupled': 'close-coupled',
  gear: 'gear',
  belt: 'belt',
};
export const INPUT_WORDS: Record<Of<PumpSet['coupling']['input']>, string> = {
  hub: 'a hub on the shaft',
  quill: 'a quill that takes the shaft',
  'pump-shaft': 'the shaft is the pump’s',
};
export const STARTED_WORDS: Record<Of<PumpSet['supply']['start']>, string> = {
  direct: 'direct on line',
  'star-delta': 'star-delta',
  'part-winding': 'part-winding',
  soft: 'soft starter',
  drive: 'drive',
};
export const LOAD_WORDS: Record<Of<PumpSet['load']['kind']>, string> = {
  'constant-torque': 'constant torque',
  quadratic: 'grows with the square of speed',
};
export const POINTS_WORDS: Record<Of<PumpSet['shaftDirection']>, string> = {
  horizontal: 'horizontal',
  down: 'down',
  up: 'up',
};
export const ENTRY_WORDS: Record<Of<PumpSet['base']['cableEntry']>, string> = {
  left: 'at the left, seen from the drive end',
  right: 'at the right, seen from the drive end',
  top: 'at the top',
};
export const DIAL_WORDS: Record<Of<PumpSet['supply']['overloadIn']>, string> = {
  line: 'in the line',
  phase: 'in a phase of the delta',
};
