import { isHidden } from './dimension-line';
import type { Detail, DimensionLine } from './drawing';
import { frameDetail, type ViewFrame } from './frame-view';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { PAD } from './outline';
import type { Placed } from './place';
import { isChanged, type UnderFeet, underWords } from './under-feet';

/** Letters run on over the views of one comparison. */
export type NextLetter = () => string;

/** Where a letter stands free: under `bottomY`, and not left of `clearX`. */
interface Free {
  bottomY: number;
  clearX: number;
}

/** What lies under the far foot enlarged, where one of its layers is too thin to be seen in the view. */
export function underDetail(
  candidate: Mount,
  out: Mount | null,
  under: UnderFeet | null,
  { holesX }: Placed,
  { unit }: MountFacts,
  { textMm, unseenMm, bottomY, clearX }: ViewFrame & Free,
  nextLetter: NextLetter,
): Detail[] {
  if (under === null || out === null || candidate.alongMm === null || !isChanged(under)) return [];
  const layers = shownOf(layersOf(under), unseenMm);
  if (layers.length === 0) return [];
  const { feetY, addMm } = under;
  const high = Math.min(...layers.map(({ from }) => from));
  const low = Math.max(...layers.map(({ to }) => to));
  const edgeX = holesX + candidate.alongMm + PAD * feetY;
  const spot = { x: edgeX, y: (high + low) / 2 };
  const width = Math.min(Math.max((low - high) * 4, 6), feetY);
  const window = frameDetail({ x: edgeX + width / 4, y: spot.y }, width);
  const t = window.textMm;
  const lineX = edgeX + t * 1.3;
  const letter = nextLetter();
  const upright = (name: string, from: number, to: number, tone: DimensionLine['tone']): DimensionLine => ({
    name,
    direction: 'upright',
    from: { x: edgeX + t * 0.3, y: from },
    to: { x: edgeX + t * 0.3, y: to },
    at: lineX,
    upper: null,
    lower: null,
    isUnknown: false,
    isBeside: false,
    tone,
  });
  const middles = over(
    under.baseY - t * 0.75,
    apart(
      layers.map(({ from, to }) => (from + to) / 2),
      t * 1.3,
    ),
  );
  return [
    {
      letter,
      caption: `${letter}, ${CAPTIONS[under.work ?? 'none']}`,
      spot: { centre: spot, radiusMm: textMm * 0.85 },
      leader: leaderDown(spot, { bottomY, clearX }, textMm),
      ...window,
      dimensions: layers.map(({ words, from, to, tone }) => upright(words, from, to, tone)),
      labels: layers.map(({ words, mm, tone }, i) => ({
        text: `${lengthText(Math.abs(mm), unit)} ${words}`,
        at: { x: lineX + t * 0.6, y: (middles[i] ?? spot.y) + t * 0.3 },
        anchor: 'start',
        tone,
        leader: [],
      })),
      figures: null,
      sentence: `Detail ${letter}: ${candidate.name} stands ${lengthText(Math.abs(addMm), unit)} ${unit} ${
        addMm > 0 ? 'lower' : 'higher'
      } than ${out.name}. ${underWords(under, unit)} ${layers
        .map(({ words, mm }) => `${lengthText(Math.abs(mm), unit)} ${unit} ${words}`)
        .join(', ')}.`,
    },
  ];
}

const CAPTIONS = {
  shims: 'shims',
  'ground-block': 'ground block',
  'transition-base': 'transition base',
  none: 'foot',
} as const;

/** The layers under the foot from above, each with its thickness and what is to be done with it. */
function layersOf({ work, feetY, baseY, addMm, nowMm, inAllMm }: UnderFeet) {
  const layer = (words: string, from: number, to: number, tone: DimensionLine['tone']) => ({
    words,
    from,
    to,
    mm: to - from,
    tone,
  });
  const oldY = feetY + addMm;
  const layers =
    work === 'ground-block' || work === 'transition-base'
      ? [layer('high', feetY, baseY, 'act')]
      : [
          addMm > 0
            ? layer(work === null ? 'lower' : 'to add', feetY, oldY, work === null ? 'in' : 'act')
            : layer(work === null ? 'higher' : 'out', oldY, feetY, work === null ? 'in' : 'act'),
          ...(nowMm === null || (inAllMm !== null && inAllMm < 0)
            ? []
            : [layer(work === null ? 'now' : 'stay', Math.max(oldY, feetY), baseY, 'in')]),
        ];
  return layers.filter(({ mm }) => Math.abs(mm) > 0.005);
}

/** The thin layers, and a thicker one beside them while it does not dwarf them. */
function shownOf<Layer extends { mm: number }>(layers: readonly Layer[], unseenMm: number): Layer[] {
  const thin = layers.filter(({ mm }) => isHidden(mm, unseenMm));
  const sum = (of: readonly Layer[]) => of.reduce((total, { mm }) => total + mm, 0);
  return sum(layers) <= 4 * sum(thin) ? [...layers] : thin;
}

/** From a spot to just under all that is drawn, where its letter stands free. */
function leaderDown(spot: { x: number; y: number }, { bottomY, clearX }: Free, textMm: number) {
  const x = Math.max(spot.x + textMm * 1.1, clearX);
  const to = { x, y: Math.max(bottomY, spot.y + textMm) + textMm * 0.15 };
  const length = Math.hypot(to.x - spot.x, to.y - spot.y);
  const share = (textMm * 0.85) / length;
  return { from: { x: spot.x + (to.x - spot.x) * share, y: spot.y + (to.y - spot.y) * share }, to };
}

/** Moves places up until none is under `y`: there runs the edge of the base. */
const over = (y: number, places: readonly number[]): number[] => {
  const under = Math.max(0, ...places.map((place) => place - y));
  return places.map((place) => place - under);
};

/** Keeps two places at least `least` apart, moving each by half of what is missing. */
function apart(places: readonly number[], least: number): number[] {
  const [first, second] = places;
  if (first === undefined || second === undefined || second - first >= least) return [...places];
  const missing = (least - (second - first)) / 2;
  return [first - missing, second + missing];
}

/** The upper edge of the two shaft ends enlarged, where diameter or position differ by too little to be seen. */
export function shaftDetails(
  candidate: Mount,
  out: Mount | null,
  placed: Placed,
  placedOut: Placed | null,
  facts: MountFacts,
  { textMm, unseenMm }: ViewFrame,
  nextLetter: NextLetter,
): Detail[] {
  const [d, dOut] = [candidate.shaftDiameterMm, out === null ? null : out.shaftDiameterMm];
  const [end, endOut] = [placed.shaftEndX, placedOut === null ? null : placedOut.shaftEndX];
  if (d === null || dOut === null || end === null || endOut === null) return [];
  const step = Math.abs(d - dOut) / 2;
  const shift = Math.abs(end - endOut);
  const hidden = [step, shift].filter((difference) => isHidden(difference, unseenMm));
  if (hidden.length === 0) return [];
  const letter = nextLetter();
  const spot = { x: Math.max(end, endOut), y: -Math.max(d, dOut) / 2 };
  const width = Math.min(Math.max(Math.max(...hidden) * 12, 5), Math.max(d, dOut) * 1.6);
  const window = frameDetail({ x: spot.x + width * 0.12, y: spot.y + width * 0.12 }, width);
  const t = window.textMm;
  const lowest = window.viewBox.y + window.viewBox.height;
  const tone = RINGS.some((id) => facts.work.includes(id)) && d < dOut ? 'act' : 'in';
  const start = window.viewBox.x + window.viewBox.width - t * 0.3;
  return [
    {
      letter,
      caption: `${letter}, shaft edge`,
      spot: { centre: spot, radiusMm: textMm * 0.85 },
      leader: leaderFrom(spot, textMm, -0.5, -1.1),
      viewBox: window.viewBox,
      textMm: t,
      dimensions: [],
      labels: [
        {
          text: `Ø${lengthText(d, facts.unit)}`,
          at: { x: start, y: lowest - t * 1.5 },
          anchor: 'end',
          tone,
          leader: [],
        },
        {
          text: `was Ø${lengthText(dOut, facts.unit)}`,
          at: { x: start, y: lowest - t * 0.4 },
          anchor: 'end',
          tone: 'out',
          leader: [],
        },
      ],
      figures: null,
      sentence: `Detail ${letter}: shaft ${lengthText(d, facts.unit)} ${facts.unit} in diameter against ${lengthText(
        dOut,
        facts.unit,
      )}; its end is ${lengthText(shift, facts.unit)} ${facts.unit} ${end > endOut ? 'short of' : 'beyond'} the old one.`,
    },
  ];
}

const RINGS = ['bushing', 'sleeve', 'quill-bushing'] as const;

/** A short leader from the edge of a spot toward its letter. */
export function leaderFrom(spot: { x: number; y: number }, textMm: number, dx: number, dy: number) {
  const length = Math.hypot(dx, dy);
  const along = (mm: number) => ({ x: spot.x + (dx / length) * mm, y: spot.y + (dy / length) * mm });
  return { from: along(textMm * 0.85), to: along(textMm * 1.9) };
}
