import type { Face } from '@/lib/standards/dimension';
import { drawnLength, type TwoFigures } from './dimension-line';
import type { Drawing } from './drawing';
import { faceHeightLines, overhangLine, uprightFigures } from './face-heights';
import { holeText } from './face-holes';
import { faceLabels } from './face-labels';
import { faceShapes } from './face-shapes';
import { boxOf, frameView } from './frame-view';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { sentenceOf } from './sentence';
import { textWidth } from './text-size';
import { isChanged, underFeet, underLabels, underWords } from './under-feet';

/** The face from the drive end, feet down: pitch circle, spigot, outside, height over the foot plane. */
export function faceView(candidate: Mount, out: Mount | null, facts: MountFacts): Drawing | null {
  if (candidate.face === null && (out === null || out.face === null)) return null;
  const under = underFeet(candidate, out, facts);
  const shapes = faceShapes(candidate, out, under, facts);
  if (shapes.length === 0) return null;
  const content = boxOf(shapes);
  const told = under !== null && isChanged(under) ? under : null;
  const { over } = uprightFigures(candidate, out, facts);
  const right = over === null ? 1 : 2.2 + widestOf(over, facts.unit);
  const frame = frameView(content, { left: 3.6, right, top: 4.4, bottom: told === null ? 0.6 : 2.8 });
  const figures = figuresOf(candidate, out, facts);
  const upright = faceHeightLines(candidate, out, told, content, frame.textMm, facts);
  const corner = { x: frame.viewBox.x + frame.textMm * 0.2, y: content.y + content.height + frame.textMm * 1.2 };
  const overhang = overhangLine(candidate, out, content, frame.textMm, facts);
  return {
    caption: 'Face from the drive end',
    viewBox: frame.viewBox,
    textMm: frame.textMm,
    shapes,
    dimensions: overhang === null ? upright : [...upright, overhang.line],
    labels: [
      ...faceLabels(candidate, out, frame.viewBox, frame.textMm, facts),
      ...(overhang === null ? [] : overhang.labels),
      ...(told === null ? [] : underLabels(told, { at: corner, anchor: 'start' }, frame.textMm, facts.unit)),
    ],
    details: [],
    notDrawn: figures.filter((figure) => figure.isAsked && drawnLength(figure) === null).map((figure) => figure.name),
    sentence: sentenceOf('Face from the drive end', candidate, out, figures, facts, [
      ...holeWords(candidate, out, facts),
      ...(under === null ? [] : [underWords(under, facts.unit)]),
    ]),
  };
}

/** The longer of two figures, in heights of text. */
function widestOf({ in: own, out }: TwoFigures, unit: MountFacts['unit']): number {
  return Math.max(...[own, out ?? null].map((mm) => textWidth(lengthText(mm, unit), 1)));
}

function figuresOf(candidate: Mount, out: Mount | null, facts: MountFacts) {
  const { height, over } = uprightFigures(candidate, out, facts);
  const of = (name: string, read: (face: Face) => number | null) => ({
    name,
    isAsked: true,
    in: candidate.face === null ? null : read(candidate.face),
    out: out === null ? undefined : out.face === null ? null : read(out.face),
  });
  return [
    of('pitch circle', (face) => face.pitchCircleMm),
    of('spigot', (face) => face.spigotMm),
    of('outside', (face) => face.outsideMm),
    { name: 'shaft height', isAsked: height !== null, in: height?.in ?? null, out: height?.out },
    { name: 'face over the foot plane', isAsked: over !== null, in: over?.in ?? null, out: over?.out },
  ];
}

function holeWords(candidate: Mount, out: Mount | null, { unit, act }: MountFacts): string[] {
  const of = (face: Face | null) =>
    face === null ? 'no face known' : holeText(face, unit).replaceAll('?', 'not known');
  if (out === null) return [`Holes ${of(candidate.face)}.`];
  const doMiss = act.includes('face') && candidate.face !== null && out.face !== null;
  return [`Holes ${of(candidate.face)} in, ${of(out.face)} out.${doMiss ? ' The two faces do not meet.' : ''}`];
}
