import type { RuleId } from '@/lib/plausibility/doubt';

/** What each rule is about, in a word or three. */
export const RULE_WORDS: Record<RuleId, string> = {
  speed: 'Speed',
  amps: 'Amps and power',
  'power-of-rows': 'Power of the rows',
  efficiency: 'Efficiency',
  'code-letter': 'Code letter',
  torque: 'Torques',
  'brake-torque': 'Brake',
  'service-factor': 'Service factor',
  phases: 'Phases',
  'frame-name': 'Name of the frame',
  'frame-size': 'Size of the frame',
  mounting: 'Mounting code',
  face: 'Face',
  held: 'Feet or face',
  'seat-face': 'Face of the seat',
  'hub-bore': 'Hub bore',
  'supply-phases': 'Phases of the supply',
  'supply-hertz': 'Hertz of the supply',
  'supply-volts': 'Volts of the supply',
  overload: 'Overload',
  'pump-speed': 'Speed of the pump',
  load: 'Load',
  'drive-service-factor': 'Service factor on a drive',
  'coupling-torque': 'Torque of the coupling',
  serial: 'Serial number twice',
  'two-places': 'Number twice',
};

export const DOUBT_GRADES = { wrong: 'Cannot be right', doubtful: 'Hard to believe' } as const;

/** "1 doubt", "3 doubts". */
export const doubtsText = (count: number): string => (count === 1 ? '1 doubt' : `${count} doubts`);
