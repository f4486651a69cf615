import type { StepId } from '@/lib/job/step-ids';

const NAMES: Readonly<Record<StepId, string>> = {
  isolate: 'isolated',
  'second-feeds': 'second feeds',
  'dc-link': 'DC link',
  'pressure-heat': 'pressure and heat',
  lift: 'lifting',
  'why-failed': 'why it failed',
  'turn-by-hand': 'pump turned by hand',
  insulation: 'insulation',
  rotation: 'rotation',
  overload: 'overload',
  'drive-plate': 'plate in the drive',
  'soft-foot': 'soft foot',
  offset: 'offset',
  gap: 'angle',
  belts: 'belts',
  valves: 'valves',
  relief: 'relief',
  guard: 'guard',
  'earth-bond': 'earth bond',
  interlocks: 'interlocks',
  hygiene: 'hygiene release',
  area: 'area release',
  running: 'running current',
  'hand-over': 'handed over',
};

/** A step in a word or two, for a list of those ticked. A step of an older program keeps its id. */
export const stepName = (id: string): string => (id in NAMES ? NAMES[id as StepId] : id);
