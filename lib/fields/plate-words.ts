import type { Motor } from '@/lib/plant/motor';
import type { Auxiliary } from '@/lib/plant/motor-words';

type Told<Key extends keyof Motor> = NonNullable<Motor[Key]> & string;

export const KIND_WORDS: Record<Told<'kind'>, string> = {
  cage: 'cage',
  'permanent-magnet': 'permanent magnet',
  reluctance: 'reluctance',
  'wound-rotor': 'wound rotor',
  'single-phase': 'single-phase',
  'two-speed': 'two-speed',
};

export const WINDING_WORDS: Record<Told<'winding'>, string> = {
  'star-delta-6': 'star-delta, 6 leads',
  'part-winding-6': 'part-winding, 6 leads',
  'star-9': 'star, 9 leads',
  'delta-9': 'delta, 9 leads',
  'star-delta-12': 'star-delta, 12 leads',
};

/** Seen from the drive end, feet down. */
export const SIDE_WORDS: Record<Told<'terminalBox'>, string> = {
  left: 'left, seen from the drive end',
  right: 'right, seen from the drive end',
  top: 'on top',
};

/** Seen from the drive end. */
export const TURN_WORDS: Record<Told<'rotation'>, string> = {
  cw: 'clockwise, seen from the drive end',
  ccw: 'anticlockwise, seen from the drive end',
  either: 'either way',
};

export const ENCLOSED_WORDS: Record<Told<'washdown'>, string> = {
  none: 'not made for it',
  painted: 'made for it, painted',
  stainless: 'made for it, stainless',
};

export const AUXILIARY_WORDS: Record<Auxiliary, string> = {
  brake: 'brake',
  thermistor: 'thermistors',
  thermostat: 'thermostat',
  rtd: 'resistance thermometers',
  heater: 'heater',
  encoder: 'encoder',
  'insulated-bearing': 'insulated bearing',
  'shaft-ground': 'shaft grounding',
};
