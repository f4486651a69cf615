import type { FrameOption } from '@/lib/standards/measured/frame-options';
import { figure } from '@/lib/units/figure';
import type { MeasuredAsked } from './measured-asked';

/** The fields of a motor's form that a frame found and what was measured fill in, by their names. */
export function motorFieldsOf(option: FrameOption | null, { measured }: MeasuredAsked): Record<string, string> {
  const fields: Record<string, string> = {};
  if (option !== null) {
    const kind = option.fit.face?.kind;
    // The large and the standard tapped flange of one frame differ: which it is stands in the frame's text.
    fields.frame = kind === 'FF' ? (option.frame.split(' ')[0] ?? option.frame) : option.frame;
    if (kind === 'FF') fields.mounting = 'IM B35';
    if (kind === 'FT') fields.mounting = 'IM B34';
  }
  // In millimetres and said so: whoever opens it may read inches.
  for (const [name, mm] of Object.entries(measured)) fields[`measured.${name}`] = `${figure(mm, 3)} mm`;
  return fields;
}

export const newMotorPath = (fields: Readonly<Record<string, string>>): string =>
  `/motors/new?${new URLSearchParams(fields)}`;
