import type { CriterionId, Grade } from '@/lib/matching/finding';
import { figure } from '@/lib/units/figure';

export type Verdict = 'straight-swap' | 'swap-with-work' | 'check-first' | 'unsuitable';

export const VERDICT_WORDS: Record<Verdict, string> = {
  'straight-swap': 'Straight swap',
  'swap-with-work': 'Swap with work',
  'check-first': 'Check first',
  unsuitable: 'Unsuitable',
};

/** What a glyph is called for those who cannot see it. */
export const GRADE_WORDS: Record<Grade, string> = {
  ok: 'fits',
  note: 'good to know',
  work: 'work',
  check: 'check',
  block: 'does not fit',
};

export const CRITERION_WORDS: Record<CriterionId, string> = {
  mounting: 'Mounting',
  'shaft-height': 'Shaft height',
  'foot-holes': 'Foot holes',
  'shaft-position': 'Shaft position',
  'shaft-diameter': 'Shaft diameter',
  'shaft-length': 'Shaft length',
  key: 'Key',
  face: 'Face',
  'terminal-box': 'Terminal box',
  envelope: 'Overall length',
  lift: 'Mass to lift',
  phases: 'Phases',
  voltage: 'Voltage',
  frequency: 'Frequency',
  starting: 'Starting',
  'full-load-current': 'Full-load current',
  'drive-suitability': 'Duty on the drive',
  speed: 'Speed',
  power: 'Power',
  torque: 'Torque',
  breakaway: 'Breakaway',
  duty: 'Duty',
  loading: 'Loading',
  enclosure: 'Enclosure',
  'temperature-altitude': 'Heat and altitude',
  'area-classification': 'Classification',
  washdown: 'Washdown',
  auxiliaries: 'Auxiliaries',
  rotation: 'Rotation',
  bearings: 'Bearings',
  'efficiency-class': 'Efficiency',
};

/** Hours as hours and minutes, to the minute: 3.25 is 3 and 15. */
export function clockOf(hours: number): { h: string; min: string } {
  const minutes = Math.round(hours * 60);
  return { h: String(Math.floor(minutes / 60)), min: String(minutes % 60).padStart(2, '0') };
}

/** "3 h 15" for running text and rows. */
export function hoursText(hours: number): string {
  const { h, min } = clockOf(hours);
  return `${h} h ${min}`;
}

/** A figure with its sign, a true minus, and 0 as "0". */
export function signed(value: number, digits = 2): string {
  const text = figure(value, digits);
  return value > 0 && text !== '0' ? `+${text}` : text;
}
