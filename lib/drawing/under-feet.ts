import type { Label, Point, Polygon } from './drawing';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import { type MountFacts, shimsDrawnMm } from './mount-facts';
import { polygon, rectangle } from './outline';

/** What lies between the candidate's feet and the base once the work is done. Lengths in mm. */
export interface UnderFeet {
  /** Null: the findings ask for no work here. */
  work: 'shims' | 'ground-block' | 'transition-base' | null;
  nowMm: number | null;
  /** What the candidate is lower by; negative: it is higher. */
  addMm: number;
  /** Null where what lies there now is not known. Negative: the feet would stand in the base. */
  inAllMm: number | null;
  /** The planes of the candidate's feet and of the base, below the shaft. */
  feetY: number;
  baseY: number;
}

/** Null where a motor has no feet, or a height is not known. */
export function underFeet(candidate: Mount, out: Mount | null, facts: MountFacts): UnderFeet | null {
  if (out === null || facts.together === 'faces' || candidate.feet === false) return null;
  if (candidate.heightMm === null || out.heightMm === null) return null;
  const addMm = out.heightMm - candidate.heightMm;
  const nowMm = facts.shimsPresentMm;
  const [feetY, baseY] = [candidate.heightMm, out.heightMm + shimsDrawnMm(facts)];
  const inAllMm = nowMm === null ? null : nowMm + addMm;
  return { work: workOf(facts, baseY - feetY), nowMm, addMm, inAllMm, feetY, baseY };
}

/** Nothing has room under feet that would stand in the base. */
function workOf({ work }: MountFacts, roomMm: number): UnderFeet['work'] {
  if (roomMm < -THIN) return null;
  return WORKS.find((id) => work.includes(id)) ?? null;
}

const WORKS = ['transition-base', 'ground-block', 'shims'] as const;
/** Less is no layer, mm. */
const THIN = 0.005;

/** Is there more to say than that the shims stay? */
export const isChanged = ({ work, addMm }: UnderFeet): boolean => work !== null || Math.abs(addMm) >= THIN;

/** What lies there to scale; `pads` are the places of the feet, seen as the view sees them. */
export function underShapes(under: UnderFeet, pads: readonly { x: number; width: number }[]): Polygon[] {
  if (pads.length === 0) return [];
  const { work, feetY, baseY, addMm } = under;
  const layer = (role: Polygon['role'], part: Polygon['part'], top: number, bottom: number) =>
    bottom - top < THIN ? [] : pads.map(({ x, width }) => polygon(role, part, rectangle(x, top, width, bottom - top)));
  switch (work) {
    case 'transition-base': {
      const [left, right] = [Math.min(...pads.map(({ x }) => x)), Math.max(...pads.map(({ x, width }) => x + width))];
      return [polygon('new', 'plate', rectangle(left, feetY, right - left, baseY - feetY))];
    }
    case 'ground-block':
      return layer('new', 'block', feetY, baseY);
    case 'shims': {
      const oldY = feetY + addMm;
      return [...layer('base', 'shims-present', Math.max(feetY, oldY), baseY), ...layer('shim', 'shim', feetY, oldY)];
    }
    case null:
      return layer('base', 'shims-present', feetY + addMm, baseY);
  }
}

/** The two figures under the line of the shaft height: what lies there in the end, and what lay there. */
export function underLabels(
  under: UnderFeet,
  { at, anchor }: { at: Point; anchor: Label['anchor'] },
  textMm: number,
  unit: MountFacts['unit'],
): Label[] {
  if (!isChanged(under)) return [];
  const { work, nowMm } = under;
  const label = (text: string, tone: Label['tone'], row: number): Label => ({
    text,
    tone,
    anchor,
    at: { x: at.x, y: at.y + row * textMm * 1.15 },
    leader: [],
  });
  return [
    label(inAllText(under, unit), work === null ? 'in' : 'act', 0),
    label(`was ${lengthText(nowMm, unit)}`, 'out', 1),
  ];
}

const SHORT = {
  shims: 'shims',
  'ground-block': 'blocks',
  'transition-base': 'plate',
  none: 'under feet',
} as const;

function inAllText({ work, inAllMm, addMm }: UnderFeet, unit: MountFacts['unit']): string {
  const name = SHORT[work ?? 'none'];
  if (inAllMm !== null)
    return inAllMm < 0 ? `in base ${lengthText(-inAllMm, unit)}` : `${name} ${lengthText(inAllMm, unit)}`;
  return addMm > 0 && work !== null ? `${name} ${lengthText(addMm, unit)} + ?` : `${name} ?`;
}

/** The same in words. */
export function underWords(under: UnderFeet, unit: MountFacts['unit']): string {
  const { work, nowMm, addMm, inAllMm } = under;
  const text = (mm: number) => `${lengthText(mm, unit)} ${unit}`;
  const now = nowMm === null ? 'shims of a height not known' : `${text(nowMm)} of shims`;
  if (!isChanged(under)) return `Under the feet: ${now}, which stay.`;
  const inAll = inAllMm === null ? `${text(Math.max(addMm, 0))} and what lies there now, not known` : text(inAllMm);
  switch (work) {
    case 'transition-base':
      return `Under the feet: a transition base ${inAll} high, in place of ${now}.`;
    case 'ground-block':
      return `Under each foot: a ground block of ${inAll}, in place of ${now}.`;
    case 'shims':
      return `Under each foot: shims of ${inAll} in, ${nowMm === null ? 'not known' : text(nowMm)} out, ${text(Math.abs(addMm))} to ${
        addMm > 0 ? 'add' : 'take out'
      }.`;
    case null:
      return inAllMm !== null && inAllMm < 0
        ? `The feet would stand ${text(-inAllMm)} in the base; under the old ones ${now}.`
        : `Under the feet: ${inAllMm === null ? 'not known' : inAll}, with no work asked for; under the old ones ${now}.`;
  }
}
