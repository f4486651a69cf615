import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { figure } from '@/lib/units/figure';
import type { Work } from '../finding';

/** A new sheave on the motor; `scale` is its pitch diameter over the old one's. */
export function changeSheave({ coupling }: PumpSet, { hours }: SiteSettings, scale: number): Work {
  const { pitchDiameterMm } = coupling.sheave;
  const size =
    pitchDiameterMm === null
      ? `${figure(scale)} times the old pitch diameter`
      : `${figure(pitchDiameterMm * scale, 1)} mm pitch diameter in place of ${figure(pitchDiameterMm, 1)} mm`;
  return { id: 'sheave', what: `Fit a motor sheave of ${size}, and set the belt tension`, hours: hours.sheave };
}

/** The frequency that brings the pump back to its speed, and the drive's upper limit where that must come down too. */
export const setFrequency = ({ hours }: SiteSettings, hertz: number, limitHertz: number | null): Work => ({
  id: 'drive-settings',
  what: `Set the drive to ${figure(hertz, 1)} Hz for the duty${limitHertz === null ? '' : `, and lower its maximum frequency to ${figure(limitHertz, 1)} Hz`}`,
  hours: hours['drive-settings'],
});

/** As `setFrequency`, where nobody told the speed the drive holds: its setting times `scale`. */
export const scaleFrequency = ({ hours }: SiteSettings, scale: number): Work => ({
  id: 'drive-settings',
  what: `Set the drive’s frequencies, its limits too, to ${figure(scale)} times what they are`,
  hours: hours['drive-settings'],
});

/** The drive's upper limit, so that neither pump nor motor can be run too fast. */
export const lowerLimit = ({ hours }: SiteSettings, hertz: number): Work => ({
  id: 'drive-settings',
  what: `Lower the drive’s maximum frequency to ${figure(hertz, 1)} Hz`,
  hours: hours['drive-settings'],
});
