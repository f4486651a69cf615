import type { Classification } from '@/lib/plant/classification';
import { figure } from '@/lib/units/figure';

/** "Zone 22, IIIB, 125 °C" or "Class II, Division 2, group G, T4". What is not told is left out. */
export function classificationText(told: Classification): string {
  if (told.scheme === 'IEC')
    return [`zone ${told.zone}`, told.group, told.tempC === null ? null : `${figure(told.tempC)} °C`]
      .filter((part) => part !== null)
      .join(', ');
  return [
    `class ${'I'.repeat(told.class)}`,
    `division ${told.division}`,
    told.groups.length === 0 ? null : `group ${told.groups.join(' ')}`,
    told.tempCode,
  ]
    .filter((part) => part !== null)
    .join(', ');
}
