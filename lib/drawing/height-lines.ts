import { drawnLength, figuresOnLine, fitsOnLine, type TwoFigures } from './dimension-line';
import type { DimensionLine } from './drawing';
import type { MountFacts } from './mount-facts';
import { isChanged, type UnderFeet } from './under-feet';

/** The shaft height, upright, and on the same line what lies under the candidate's feet. */
export function heightLines(
  height: TwoFigures,
  under: UnderFeet | null,
  { fromX, at }: { fromX: number; at: number },
  textMm: number,
  unit: MountFacts['unit'],
): DimensionLine[] {
  const up = drawnLength(height);
  if (up === null) return [];
  const line = { direction: 'upright', at, tone: 'in' } as const;
  const texts = figuresOnLine(height, unit);
  const shaft: DimensionLine = {
    ...line,
    name: 'shaft height',
    from: { x: fromX, y: 0 },
    to: { x: fromX, y: up },
    isBeside: !fitsOnLine(texts, up, textMm),
    ...texts,
  };
  if (under === null || !isChanged(under) || under.baseY - under.feetY < 0.005) return [shaft];
  // Its figures stand under it as labels: it is often too short for them.
  return [
    shaft,
    {
      ...line,
      name: 'under the feet',
      from: { x: fromX, y: under.feetY },
      to: { x: fromX, y: under.baseY },
      upper: null,
      lower: null,
      isUnknown: under.nowMm === null,
      isBeside: false,
      tone: under.work === null ? 'in' : 'act',
    },
  ];
}
