export const KINDS = ['cage', 'permanent-magnet', 'reluctance', 'wound-rotor', 'single-phase', 'two-speed'] as const;
export const WINDINGS = ['star-delta-6', 'part-winding-6', 'star-9', 'delta-9', 'star-delta-12'] as const;
export const AUXILIARIES = [
  'brake',
  'thermistor',
  'thermostat',
  'rtd',
  'heater',
  'encoder',
  'insulated-bearing',
  'shaft-ground',
] as const;
export type Auxiliary = (typeof AUXILIARIES)[number];
