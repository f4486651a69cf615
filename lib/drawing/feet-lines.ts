import type { WorkId } from '@/lib/plant/work';
import { drawnLength, figuresOnLine, fitsOnLine } from './dimension-line';
import type { Box, DimensionLine, Label } from './drawing';
import type { FeetFigures } from './feet-figures';
import { doMiss } from './feet-shapes';
import { patternOf } from './hole-pattern';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { boxOfText, figuresAt } from './placed-text';
import { inRows, ROW } from './rows';
import { textWidth } from './text-size';

/** From what is drawn to the first row of lines over it, in heights of text. */
const FIRST_ROW = 1.7;

/** Shaft end and moved holes over the view, holes along under it, holes across beside it. `top`: the room over it. */
export function feetLines(
  { across, along, shaftEnd }: FeetFigures,
  slide: number,
  content: Box,
  textMm: number,
  { unit }: MountFacts,
): { lines: DimensionLine[]; top: number } {
  const half = (drawnLength(across) ?? 0) / 2;
  const [length, toEnd, width] = [drawnLength(along), drawnLength(shaftEnd), drawnLength(across)];
  const over = inRows(
    slide === 0 ? null : movedLine(slide, half, unit),
    toEnd === null
      ? null
      : {
          name: shaftEnd.name,
          from: { x: slide - toEnd, y: -4 },
          to: { x: slide, y: -half },
          tone: 'in',
          ...figuresOnLine(shaftEnd, unit),
        },
    textMm,
    (row) => content.y - textMm * (FIRST_ROW + row * ROW),
  );
  const lines = [...over.lines];
  if (length !== null) {
    const texts = figuresOnLine(along, unit);
    lines.push({
      name: along.name,
      direction: 'level',
      from: { x: slide, y: half },
      to: { x: slide + length, y: half },
      at: content.y + content.height + textMm * 1.9,
      tone: 'in',
      isBeside: !fitsOnLine(texts, length, textMm),
      ...texts,
    });
  }
  if (width !== null) {
    const texts = figuresOnLine(across, unit);
    const x = slide + (length ?? 0);
    lines.push({
      name: across.name,
      direction: 'upright',
      from: { x, y: -width / 2 },
      to: { x, y: width / 2 },
      at: content.x + content.width + textMm * 1.9,
      tone: 'in',
      isBeside: !fitsOnLine(texts, width, textMm),
      ...texts,
    });
  }
  return { lines, top: over.rows === 0 ? 0.6 : FIRST_ROW + (over.rows - 1) * ROW + 1.4 };
}

/** From the old bolts to the candidate's drive-end holes, where it is bolted down elsewhere. */
function movedLine(slide: number, half: number, unit: MountFacts['unit']) {
  return {
    name: 'new holes from the old bolts',
    from: { x: Math.min(slide, 0), y: -half },
    to: { x: Math.max(slide, 0), y: -half },
    tone: 'act' as const,
    upper: lengthText(Math.abs(slide), unit),
    lower: null,
    isUnknown: false,
  };
}

/** The diameters of the holes, on a leader from a hole at the bottom, and what is drilled anew. */
export function holeLabels(
  candidate: Mount,
  out: Mount | null,
  slide: number,
  facts: MountFacts,
  content: Box,
  textMm: number,
  along: DimensionLine | undefined,
): Label[] {
  const { unit, work } = facts;
  const [hole, farHole] = patternOf(candidate.acrossMm, candidate.alongMm, slide).slice(2);
  if (hole === undefined || farHole === undefined) return [];
  const own = `Ø${lengthText(candidate.footHoleMm, unit)}`;
  const old = out === null ? null : `Ø${lengthText(out.footHoleMm, unit)}`;
  const width = Math.max(...[own, old].map((text) => (text === null ? 0 : textWidth(text, textMm))));
  // Before the extension line of the drive-end hole, or where the room is too small, past the figures of the line.
  const isLeft = content.x + width + textMm * 0.4 < hole.x;
  const figures = along === undefined ? [] : figuresAt(along, textMm).map((text) => boxOfText(text, textMm));
  const past = Math.max(farHole.x, ...figures.map((box) => box.x + box.width));
  const at = { x: isLeft ? content.x : past + textMm, y: content.y + content.height + textMm * 1.55 };
  const label = (text: string, tone: Label['tone'], row: number, leader: Label['leader']): Label => ({
    text,
    at: { x: at.x, y: at.y + row * textMm * 1.15 },
    anchor: 'start',
    tone,
    leader,
  });
  const ownWidth = textWidth(own, textMm);
  const end = isLeft
    ? { x: at.x + ownWidth + textMm * 0.1, y: at.y - textMm * 0.35 }
    : { x: at.x + ownWidth / 2, y: at.y - textMm * 0.85 };
  const labels = [label(own, 'in', 0, [isLeft ? hole : farHole, end])];
  if (old !== null) labels.push(label(old, 'out', 1, []));
  for (const text of alsoTexts(candidate, unit)) labels.push(label(text, 'in', Math.max(2, labels.length), []));
  const anew = ANEW.find(([id]) => work.includes(id))?.[1] ?? (doMiss(facts) ? 'holes miss' : null);
  if (out !== null && anew !== null) labels.push(label(anew, 'act', Math.max(2, labels.length), []));
  return labels;
}

/** The further hole patterns of the same feet, which have no line of their own. */
export function alsoTexts({ alongOthersMm, acrossOthersMm }: Mount, unit: MountFacts['unit']): string[] {
  const also = (mm: readonly number[], way: string) =>
    mm.length === 0 ? [] : [`also ${mm.map((one) => lengthText(one, unit)).join(', ')} ${way}`];
  return [...also(alongOthersMm, 'along'), ...also(acrossOthersMm, 'across')];
}

/** What is done to the base for the holes, in short. */
const ANEW = [
  ['transition-base', 'plate, new holes'],
  ['slot-or-redrill', 'slot or redrill'],
  ['move-base', 'drill base'],
] as const satisfies [WorkId, string][];
