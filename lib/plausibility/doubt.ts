/** Rules that look at a motor alone, at a set with its motor, and at all motors of a site, each in the order they are asked. */
export const MOTOR_RULES = [
  'speed',
  'amps',
  'power-of-rows',
  'efficiency',
  'code-letter',
  'torque',
  'brake-torque',
  'service-factor',
  'phases',
  'frame-name',
  'frame-size',
  'mounting',
  'face',
] as const;
export const SET_RULES = [
  'held',
  'seat-face',
  'hub-bore',
  'supply-phases',
  'supply-hertz',
  'supply-volts',
  'overload',
  'pump-speed',
  'load',
  'drive-service-factor',
  'coupling-torque',
] as const;
export const SITE_RULES = ['serial', 'two-places'] as const;
export const RULES = [...MOTOR_RULES, ...SET_RULES, ...SITE_RULES] as const;
export type RuleId = (typeof RULES)[number];

/**
 * A figure that cannot be right (`wrong`: two figures of the record exclude each other, or nature excludes one) or is hard
 * to believe (`doubtful`: it has been seen, seldom).
 */
export interface Doubt {
  rule: RuleId;
  thing: 'set' | 'motor';
  grade: 'wrong' | 'doubtful';
  /** Path of the record's field to look at first: "ratings.0.rpm", "supply.volts". */
  field: string;
  have: number | string | null;
  expected: number | string | null;
  unit: string | null;
  /** One sentence with the arithmetic. */
  says: string;
  cite: string;
  /** The values it rests on, always written alike: with others it is another doubt. */
  figures: string;
}
