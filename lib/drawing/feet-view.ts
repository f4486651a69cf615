import { drawnLength } from './dimension-line';
import type { Drawing } from './drawing';
import { holeDetail } from './feet-detail';
import { feetFigures } from './feet-figures';
import { alsoTexts, feetLines, holeLabels } from './feet-lines';
import { feetShapes, feetWords } from './feet-shapes';
import { boxOf, frameView, textMmOf } from './frame-view';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { slideOf } from './place';
import { inWords, sentenceOf } from './sentence';
import type { NextLetter } from './side-details';

/** The feet from above: the two hole patterns, drive-end holes together. Null where neither motor has feet to show. */
export function feetView(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  nextLetter: NextLetter,
): Drawing | null {
  if (candidate.feet === false || facts.together === 'faces') return null;
  const slide = slideOf(candidate, out, facts);
  const figures = feetFigures(candidate, out);
  const shapes = feetShapes(candidate, out, slide, facts);
  if (shapes.every(({ role }) => role === 'centre')) return null; // a line through nothing is no view
  const content = boxOf(shapes);
  const sides = { left: 1.4, right: 4 };
  const textMm = textMmOf(content, sides);
  const { lines, top } = feetLines(figures, slide, content, textMm, facts);
  const along = lines.find(({ name }) => name === figures.along.name);
  const labels = holeLabels(candidate, out, slide, facts, content, textMm, along);
  const frame = frameView(content, { ...sides, top, bottom: Math.max(3.8, 2.4 + labels.length * 1.15) });
  return {
    caption: 'Feet from above',
    viewBox: frame.viewBox,
    textMm,
    shapes,
    dimensions: lines,
    labels,
    details: holeDetail(candidate, out, slide, facts, frame, nextLetter),
    notDrawn: Object.values(figures)
      .filter((figure) => drawnLength(figure) === null)
      .map((figure) => figure.name),
    sentence: sentenceOf('Feet from above', candidate, out, Object.values(figures), facts, [
      ...(slide === 0
        ? []
        : [
            `Its holes stand ${inWords(Math.abs(slide), facts.unit)} ${slide < 0 ? 'nearer to' : 'further from'} the pump than the old bolts.`,
          ]),
      ...alsoTexts(candidate, facts.unit).map((also) => `Its feet have holes ${also}.`),
      ...feetWords(facts),
    ]),
  };
}
