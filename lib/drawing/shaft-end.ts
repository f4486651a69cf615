import type { Box, Label, Point, Shape } from './drawing';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { polygon, rectangle } from './outline';
import type { Placed } from './place';

/** What a view needs to know of the shaft ends. */
export interface Ends {
  candidate: Mount;
  out: Mount | null;
  placed: Placed;
  placedOut: Placed | null;
  facts: MountFacts;
}

/**
 * The hub sits where the failed motor's shaft ends, or behind a spacer where the candidate's does; its outside is nominal.
 * A bushing fills the ring between shaft and bore.
 */
export function hubShapes(ends: Ends): Shape[] {
  const { candidate, placedOut, facts } = ends;
  const old = placedOut === null ? null : placedOut.shaftEndX;
  if (old === null) return [];
  const spacer = spacerMm(ends);
  const r = hubRadius(ends);
  const shapes: Shape[] =
    spacer === null || r === null
      ? []
      : [polygon('new', 'spacer', rectangle(old, -r * SPACER, spacer, 2 * r * SPACER))];
  const { lengthMm: length, boreMm: bore } = facts.hub ?? NO_HUB;
  if (length === null || bore === null || r === null) return shapes;
  const start = old + (spacer ?? 0);
  shapes.push(polygon(isNewHub(facts) ? 'act-line' : 'hub', 'hub', rectangle(start, -r, length, 2 * r)));
  const d = candidate.shaftDiameterMm;
  if (ringOf(facts) === null || d === null || d >= bore) return shapes;
  const ring = (bore - d) / 2;
  return [
    ...shapes,
    polygon('shim', 'bushing', rectangle(start, -bore / 2, length, ring)),
    polygon('shim', 'bushing', rectangle(start, d / 2, length, ring)),
  ];
}

const NO_HUB = { lengthMm: null, boreMm: null };
/** Nominal: radius of a hub to its bore, and of a spacer to the hub. */
const HUB = 1.3;
const SPACER = 0.7;

function hubRadius({ facts, out, candidate }: Ends): number | null {
  const bore = facts.hub?.boreMm ?? (out === null ? null : out.shaftDiameterMm);
  if (bore === null) return null;
  const isNew = isNewHub(facts) || facts.work.includes('rebore');
  return Math.max(bore, isNew ? (candidate.shaftDiameterMm ?? 0) : 0) * HUB;
}

const isNewHub = ({ work }: MountFacts) => work.includes('new-hub') || work.includes('sheave');

/** How much further from the pump the candidate's shaft ends, where a longer spacer is to make up for it. */
function spacerMm({ placed, placedOut, facts }: Ends): number | null {
  if (!facts.work.includes('spacer-coupling')) return null;
  const [own, old] = [placed.shaftEndX, placedOut === null ? null : placedOut.shaftEndX];
  return own === null || old === null || own <= old ? null : own - old;
}

const RINGS = { bushing: 'bushing', sleeve: 'sleeve', 'quill-bushing': 'bushing' } as const;

/** What fills the bore, as it is called; null where nothing does. */
function ringOf({ work }: MountFacts): string | null {
  const id = (['bushing', 'sleeve', 'quill-bushing'] as const).find((one) => work.includes(one));
  return id === undefined ? null : RINGS[id];
}

/** What is done at the shaft end: as its label has it, and as a sentence. */
export function shaftEndTold(ends: Ends): { text: string; says: string }[] {
  const { candidate, out, facts } = ends;
  const { unit, work } = facts;
  const told: { text: string; says: string }[] = [];
  const spacer = spacerMm(ends);
  if (spacer !== null) {
    const longer = lengthText(spacer, unit);
    told.push({ text: `spacer +${longer}`, says: `A spacer ${longer} ${unit} longer fills the gap to the hub.` });
  }
  const bore = lengthText(out === null ? null : out.shaftDiameterMm, unit);
  const shaft = lengthText(candidate.shaftDiameterMm, unit);
  const ring = ringOf(facts);
  if (ring !== null)
    told.push({
      text: `${ring} Ø${bore} / Ø${shaft}`,
      says: `A ${ring} fills the bore of ${bore} ${unit} down to the shaft of ${shaft} ${unit}.`,
    });
  if (work.includes('rebore'))
    told.push({
      text: `rebore Ø${bore} to Ø${shaft}`,
      says: `The hub is rebored from ${bore} ${unit} to ${shaft} ${unit}.`,
    });
  const hub = work.includes('new-hub') ? 'new hub' : work.includes('sheave') ? 'new sheave' : null;
  if (hub !== null) told.push({ text: `${hub} Ø${shaft}`, says: `A ${hub} bored ${shaft} ${unit} goes on.` });
  return told;
}

/** The labels of the shaft end in rows over the view, the lowest with a leader to the hub past the letter of a detail. */
export function shaftEndLabels(ends: Ends, at: Point, textMm: number, letter: Box | null): Label[] {
  const told = shaftEndTold(ends);
  const tip = besideLetter(tipOf(ends), letter, textMm);
  return told.map(({ text }, i) => {
    const y = at.y - (told.length - 1 - i) * ROW_OF_TEXT * textMm;
    const isLowest = i === told.length - 1;
    const x = tip === null ? at.x : Math.max(tip.x, at.x + textMm);
    return {
      text,
      at: { x: at.x, y },
      anchor: 'start',
      tone: 'act',
      leader: isLowest && tip !== null ? [tip, { x, y: y + textMm * 0.4 }] : [],
    };
  });
}

export const ROW_OF_TEXT = 1.2;

function besideLetter(tip: Point | null, letter: Box | null, textMm: number): Point | null {
  if (tip === null || letter === null) return tip;
  const right = letter.x + letter.width + textMm * 0.2;
  return tip.x > letter.x - textMm * 0.2 && tip.x < right ? { x: right, y: tip.y } : tip;
}

/** The middle of the hub's upper edge, or of the shaft's where no hub is drawn. */
function tipOf(ends: Ends): Point | null {
  const { placed, placedOut, facts, candidate } = ends;
  const end = placedOut?.shaftEndX ?? placed.shaftEndX;
  if (end === null) return null;
  const spacer = spacerMm(ends);
  const r = hubRadius(ends);
  if (spacer !== null && r !== null) return { x: end + spacer / 2, y: -r * SPACER };
  const length = facts.hub === null ? null : facts.hub.lengthMm;
  if (length !== null && r !== null) return { x: end + length / 2, y: -r };
  const { shaftDiameterMm: d, shaftLengthMm } = candidate;
  if (d === null || placed.shaftEndX === null) return null;
  return { x: placed.shaftEndX + (shaftLengthMm ?? d) / 2, y: -d / 2 };
}
