import type { Query } from '@/app/lists/asked-for';
import { lengthField, type Units } from '@/lib/fields/field';
import type { FormProblem } from '@/lib/fields/read-form';
import type { FaceSeen } from '@/lib/standards/measured/frames-measured';
import { MEASURABLE, type Measurable, type Tool } from '@/lib/standards/measured/misfit';

export const MEASURED_WORDS: Readonly<Record<Measurable, { label: string; hint: string; most: number }>> = {
  shaftHeightMm: {
    label: 'Shaft height',
    hint: 'From the ground under the feet to the middle of the shaft.',
    most: 1_000,
  },
  holesAcrossMm: { label: 'Holes across', hint: 'Middle to middle, square to the shaft.', most: 2_000 },
  holesAlongMm: { label: 'Holes along', hint: 'Middle to middle, along the shaft. Note a second pair.', most: 2_000 },
  holeToShoulderMm: {
    label: 'Holes to shoulder',
    hint: 'Front holes to where the shaft begins to be thick.',
    most: 1_000,
  },
  shaftDiameterMm: { label: 'Shaft diameter', hint: 'With a caliper where there is one.', most: 300 },
  shaftLengthMm: { label: 'Shaft length', hint: 'Shoulder to end.', most: 600 },
  keyWidthMm: { label: 'Key width', hint: 'Across the key or its seat.', most: 100 },
  pitchCircleMm: {
    label: 'Pitch circle',
    hint: 'Middle of one face hole to the middle of the one across.',
    most: 2_000,
  },
  spigotMm: { label: 'Spigot', hint: 'The raised or sunk rim that centres the face.', most: 2_000 },
  faceDiameterMm: { label: 'Face diameter', hint: 'Over all.', most: 2_500 },
};

/** What the address tells of a motor on the bench. */
export interface MeasuredAsked {
  /** As typed, by name. */
  typed: Partial<Record<Measurable, string>>;
  measured: Partial<Record<Measurable, number>>;
  face: FaceSeen | null;
  tool: Tool;
  problems: FormProblem[];
}

export function measuredAsked(query: Query, units: Units): MeasuredAsked {
  const asked: MeasuredAsked = { typed: {}, measured: {}, face: faceOf(query.face), tool: 'tape', problems: [] };
  if (query.tool === 'caliper') asked.tool = 'caliper';
  for (const name of MEASURABLE) {
    const value = query[name];
    const text =
      typeof value === 'string'
        ? value
            .replaceAll(/\p{Cc}/gu, ' ')
            .trim()
            .slice(0, 40)
        : '';
    if (text === '') continue;
    asked.typed[name] = text;
    const { label, most } = MEASURED_WORDS[name];
    const read = lengthField(name, label, most).read(text, units);
    const mm = read.ok ? read.edit[name] : null;
    if (typeof mm === 'number' && mm > 0) asked.measured[name] = mm;
    else asked.problems.push({ path: name, says: `${label}: “${text}” ${read.ok ? 'is no length' : read.says}.` });
  }
  return asked;
}

const faceOf = (value: Query[string]): FaceSeen | null =>
  value === 'none' || value === 'tapped' || value === 'through' ? value : null;

/** The form of a new motor with what is known of it filled in. */
export function newMotorPath(frame: string | null, mounting: string | null, { typed }: MeasuredAsked): string {
  const params = new URLSearchParams();
  if (frame !== null) params.set('frame', frame);
  if (mounting !== null) params.set('mounting', mounting);
  for (const [name, text] of Object.entries(typed)) params.set(`measured.${name}`, text);
  return `/motors/new?${params}`;
}
