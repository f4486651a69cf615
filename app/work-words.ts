import type { WorkId } from '@/lib/plant/work';

/** Kinds of work in a word or two, as the chain of hours names them. */
export const WORK_WORDS: Record<WorkId, string> = {
  swap: 'swap',
  shims: 'shims',
  'ground-block': 'ground block',
  'transition-base': 'transition base',
  'slot-or-redrill': 'slot or redrill',
  'spacer-coupling': 'spacer',
  'move-base': 'move the base',
  bushing: 'bushing',
  sleeve: 'sleeve',
  'new-hub': 'new hub',
  rebore: 'rebore',
  'quill-bushing': 'quill bushing',
  'step-key': 'step key',
  'terminal-box': 'terminal box',
  'rewire-starter': 'rewire the starter',
  'power-factor-capacitor': 'capacitors',
  overload: 'overload dial',
  'drive-settings': 'drive settings',
  'drive-filter': 'drive filter',
  sheave: 'sheave',
  'belt-tension': 'belt tension',
  'auxiliary-wiring': 'auxiliary wiring',
  'reverse-rotation': 'turn round',
  'spare-test': 'test the spare',
};
