import { leadMarks } from '@/lib/standards/lead-marks';
import { type Connection, connectionName } from './connection-of';

export interface Wire {
  from: { x: number; y: number };
  to: { x: number; y: number };
}
export interface Lead {
  nema: string;
  iec: string;
  x: number;
  y: number;
}

/** The leads as they are joined, as geometry in units of the drawing: x to the right, y down. */
export interface LeadsDrawing {
  width: number;
  height: number;
  radius: number;
  wires: Wire[];
  leads: Lead[];
  labels: { text: string; x: number; y: number }[];
  /** The same joins in words. */
  sentence: string;
}

const STEP = 40;
const GAP = 28;
const RADIUS = 13;
const MARGIN = 8;
/** From the top of a group to its bar, and from there to the leads. */
const [TO_BAR, TO_LEADS, TIER] = [26, 54, 112];

/** The leads on the lines above, the leads joined to each other below. */
export function leadsDrawing(connection: Connection & { kind: 'known' }): LeadsDrawing {
  const { lines, joined } = connection;
  const width = Math.max(widthOf(lines), widthOf(joined)) + 2 * MARGIN;
  const drawing: LeadsDrawing = {
    ...{ width, height: MARGIN + (joined.length === 0 ? TIER : 2 * TIER - TO_BAR), radius: RADIUS },
    ...{ wires: [], leads: [], labels: [], sentence: sentenceOf(connection) },
  };
  tier(drawing, lines, MARGIN, (at) => `L${at + 1}`);
  if (joined.length > 0) tier(drawing, joined, MARGIN + TIER - TO_BAR, null);
  return drawing;
}

const widthOf = (groups: readonly (readonly number[])[]): number =>
  groups.reduce((sum, group) => sum + group.length * STEP, 0) + Math.max(0, groups.length - 1) * GAP;

function tier(
  drawing: LeadsDrawing,
  groups: readonly (readonly number[])[],
  top: number,
  nameOf: ((at: number) => string) | null,
): void {
  let x = (drawing.width - widthOf(groups)) / 2;
  const bar = top + TO_BAR;
  groups.forEach((group, at) => {
    const places = group.map((_, i) => x + STEP * (i + 0.5));
    const [first, last] = [places[0] ?? x, places.at(-1) ?? x];
    if (nameOf !== null) {
      const middle = (first + last) / 2;
      drawing.labels.push({ text: nameOf(at), x: middle, y: top + 11 });
      drawing.wires.push({ from: { x: middle, y: top + 15 }, to: { x: middle, y: bar } });
    }
    if (group.length > 1) drawing.wires.push({ from: { x: first, y: bar }, to: { x: last, y: bar } });
    group.forEach((number, i) => {
      const place = places[i] ?? x;
      drawing.wires.push({ from: { x: place, y: bar }, to: { x: place, y: top + TO_LEADS - RADIUS } });
      drawing.leads.push({ ...leadMarks(number), x: place, y: top + TO_LEADS });
    });
    x += group.length * STEP + GAP;
  });
}

function sentenceOf(connection: Connection & { kind: 'known' }): string {
  const { lines, joined } = connection;
  const onLines = lines.map((group, at) => `L${at + 1} to ${named(group)}`);
  const apart = joined.map((group) => `join ${named(group)}`);
  return `Leads for ${connectionName(connection)}: ${[...onLines, ...apart].join('; ')}.`;
}

function named(group: readonly number[]): string {
  const marks = group.map((number) => {
    const { nema, iec } = leadMarks(number);
    return `${nema} (${iec})`;
  });
  const last = marks.at(-1);
  return marks.length < 2 ? marks.join('') : `${marks.slice(0, -1).join(', ')} and ${last}`;
}
