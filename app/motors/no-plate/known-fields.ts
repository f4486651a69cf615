import { figure } from '@/lib/units/figure';
import { polesOf, type WalkAsked } from './walk-asked';

/** What the walk fills in of a motor's form beside its frame, by the names of its fields. What ran is no plate: it is a note. */
export function knownFields(asked: WalkAsked): Record<string, string> {
  const { leads, enclosure, massKg, volts, amps, rpm, hertz } = asked;
  const poles = polesOf(asked);
  const ran = [
    volts !== null && `${figure(volts, 0)} V`,
    amps !== null && `${figure(amps, 1)} A`,
    rpm !== null && `${figure(rpm, 0)} rpm`,
    hertz !== null && (volts !== null || amps !== null || rpm !== null) && `${figure(hertz, 1)} Hz`,
  ].filter((one) => typeof one === 'string');
  return {
    ...(leads !== null && { leads: String(leads) }),
    ...(poles !== null && { poles: String(poles) }),
    ...(enclosure !== null && { enclosure }),
    ...(massKg !== null && { massKg: `${figure(massKg, 1)} kg` }),
    note: `No plate.${ran.length === 0 ? '' : ` Measured while it ran: ${ran.join(', ')}.`}`,
  };
}
