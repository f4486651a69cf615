import type { Line } from '../demand';

const stated = (id: string, label: string, value: string): Line => ({
  ...{ id, label, criterion: null, of: 'asked', why: 'with the offer' },
  value: () => value,
});

/** What the offer brings with it: common practice, no source. */
export const OFFER_LINES: readonly Line[] = [
  stated('drawing', 'Dimension drawing', 'with shaft, foot holes, face, terminal box and overall length'),
  stated('data-sheet', 'Data sheet', 'speed, amps, power factor and efficiency at 50, 75 and 100 % load'),
  stated('torques', 'Torques and current', 'locked-rotor current and torque, pull-up and breakdown torque'),
  stated('tests', 'Tests', 'routine test record'),
  stated('bearings-lubrication', 'Bearings', 'sizes, grease and interval'),
  stated('leads', 'Leads', 'connection diagram with lead marks'),
  stated('lifting', 'Mass and lifting points', 'stated'),
  stated('delivery', 'Delivery', 'days until it is in the plant'),
];
