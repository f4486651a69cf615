/** Kinds of work a swap may need. A candidate's hours are the sum over its distinct ids plus `swap`. */
export const WORK_IDS = [
  'swap', // the base item of every swap: isolate, remove, set, link the leads for the supply, align, test
  'shims',
  'ground-block',
  'transition-base',
  'slot-or-redrill',
  'spacer-coupling',
  'move-base',
  'bushing',
  'sleeve',
  'new-hub',
  'rebore',
  'quill-bushing',
  'step-key',
  'terminal-box',
  'rewire-starter',
  'power-factor-capacitor',
  'overload',
  'drive-settings',
  'drive-filter',
  'sheave',
  'belt-tension',
  'auxiliary-wiring',
  'reverse-rotation',
  'spare-test',
] as const;
export type WorkId = (typeof WORK_IDS)[number];
