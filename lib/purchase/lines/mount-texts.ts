import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Dimension, Face } from '@/lib/standards/dimension';
import { minimumSheave } from '@/lib/standards/minimum-sheave';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figure } from '@/lib/units/figure';

export function withTolerance({ value, plus, minus }: Dimension, digits: number): string | null {
  if (value === null) return null;
  const text = `${figure(value, digits)} mm`;
  return plus === null || minus === null ? text : `${text}, +${figure(plus, 3)} −${figure(minus, 3)}`;
}

export function holesText(asked: Motor): string | null {
  const [across, along, hole] = (['holesAcrossMm', 'holesAlongMm', 'footHoleMm'] as const).map(
    (name) => motorDimensions(asked).dimensions[name],
  );
  if (!across?.value || !along?.value) return null;
  const other = along.alternatives.length === 0 ? '' : ` (or ${along.alternatives.map((mm) => figure(mm)).join(', ')})`;
  const size = hole?.value ? `, holes ${figure(hole.value)} mm` : '';
  return `${figure(across.value)} × ${figure(along.value)} mm${other}${size}`;
}

/** What the set has told of its hub or sheave; null: nothing, so that the shaft is that of the frame alone. */
export function hubText({ coupling: { type, hub, sheave, quill, input } }: PumpSet): string | null {
  if (type === 'belt')
    return sheave.pitchDiameterMm === null ? null : `a sheave of ${figure(sheave.pitchDiameterMm)} mm pitch diameter`;
  if (input === 'quill') return quill.depthMm === null ? null : `into a quill ${figure(quill.depthMm)} mm deep`;
  const parts = [
    hub.boreMm === null ? null : `bore ${figure(hub.boreMm, 3)} mm`,
    hub.lengthMm === null ? null : `${figure(hub.lengthMm)} mm long`,
    hub.keyWidthMm === null ? null : `key ${figure(hub.keyWidthMm, 3)} mm`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? null : `a hub: ${parts.join(', ')}`;
}

export function faceText(face: Face | null): string | null {
  if (face === null) return null;
  const parts = [
    face.name,
    face.pitchCircleMm === null ? null : `pitch circle ${figure(face.pitchCircleMm)} mm`,
    face.spigotMm === null ? null : `spigot ${figure(face.spigotMm)} mm`,
    face.outsideMm === null ? null : `outside ${figure(face.outsideMm)} mm`,
    face.holes === null || face.hole === null
      ? null
      : `${face.holes} holes ${'thread' in face.hole ? `tapped ${face.hole.thread}` : `${figure(face.hole.throughMm)} mm through`}`,
  ];
  return parts.filter((part) => part !== null).join(', ');
}

export function bearingText({ frame, poles, ratings: [row] }: Motor, { coupling }: PumpSet): string | null {
  switch (coupling.type) {
    case 'coupling':
    case 'gear':
      return 'ball bearing';
    case 'close-coupled':
      return 'ball bearing, held against the thrust of the pump';
    case 'belt': {
      const least = frame === null || poles === null || row?.kw == null ? null : minimumSheave(frame, poles, row.kw);
      const sheave = least === null ? '' : `, sheaves from ${figure(least.pitchMm, 0)} mm`;
      return `for a belt's pull${sheave}`;
    }
    case null:
      return null;
  }
}
