import type { Detail } from './drawing';
import { frameDetail, type ViewFrame } from './frame-view';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import { type MountFacts, shimsDrawnMm } from './mount-facts';
import { PAD } from './outline';
import type { Placed } from './place';

/** Letters run on over the views of one comparison. */
export type NextLetter = () => string;

/** The far foot enlarged, where the difference in height is too small to be seen in the view. */
export function shimDetail(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  unseen: { height: boolean },
  { textMm }: ViewFrame,
  nextLetter: NextLetter,
): Detail[] {
  const [low, high] = [candidate.heightMm, out === null ? null : out.heightMm];
  if (!unseen.height || low === null || high === null || candidate.alongMm === null || facts.together === 'faces')
    return [];
  const difference = high - low;
  const present = shimsDrawnMm(facts);
  const shift = Math.abs(difference) + present;
  const edgeX = candidate.alongMm + PAD * low;
  const spot = { x: edgeX, y: (low + high + present) / 2 };
  const centre = { x: edgeX + shift * 0.9, y: spot.y };
  const window = frameDetail(centre, Math.min(Math.max(shift * 9, 6), low));
  const t = window.textMm;
  const lineX = edgeX + t * 1.3;
  const text = lengthText(Math.abs(difference), facts.unit);
  const isLower = difference > 0;
  const letter = nextLetter();
  return [
    {
      letter,
      caption: isLower ? `${letter}, shims` : `${letter}, foot`,
      spot: { centre: spot, radiusMm: textMm * 0.85 },
      leader: leaderFrom(spot, textMm, 1, 1),
      viewBox: window.viewBox,
      textMm: t,
      dimensions: [
        {
          name: 'difference in height',
          direction: 'upright',
          from: { x: edgeX + t * 0.3, y: Math.min(low, high) },
          to: { x: edgeX + t * 0.3, y: Math.max(low, high) },
          at: lineX,
          upper: null,
          lower: null,
          isUnknown: false,
        },
      ],
      labels: [
        {
          text,
          at: { x: lineX + t * 0.7, y: (low + high) / 2 + t * 0.35 },
          anchor: 'start',
          tone: isLower ? 'act' : 'in',
          leader: [],
        },
      ],
      figures: null,
      sentence: `Detail ${letter}: ${candidate.name} stands ${text} ${facts.unit} ${isLower ? 'lower' : 'higher'} than ${
        out === null ? 'the seat' : out.name
      }${presentWords(facts)}.`,
    },
  ];
}

function presentWords({ shimsPresentMm, unit }: MountFacts): string {
  if (shimsPresentMm === null) return '; shims there now not known';
  return `; shims there now ${lengthText(shimsPresentMm, unit)} ${unit}`;
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
  const hidden = [step, shift].filter((difference) => difference > 0.005 && difference < unseenMm);
  if (hidden.length === 0) return [];
  const letter = nextLetter();
  const spot = { x: Math.max(end, endOut), y: -Math.max(d, dOut) / 2 };
  const width = Math.min(Math.max(Math.max(...hidden) * 12, 5), Math.max(d, dOut) * 1.6);
  const window = frameDetail({ x: spot.x + width * 0.12, y: spot.y + width * 0.12 }, width);
  const t = window.textMm;
  const lowest = window.viewBox.y + window.viewBox.height;
  const tone = facts.act.includes('bushing') && d < dOut ? 'act' : 'in';
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

/** A short leader from the edge of a spot toward its letter. */
export function leaderFrom(spot: { x: number; y: number }, textMm: number, dx: number, dy: number) {
  const length = Math.hypot(dx, dy);
  const along = (mm: number) => ({ x: spot.x + (dx / length) * mm, y: spot.y + (dy / length) * mm });
  return { from: along(textMm * 0.85), to: along(textMm * 1.9) };
}
