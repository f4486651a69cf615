import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Demand, DemandGroup, Line } from './demand';
import { lawNotes } from './law-notes';
import { BUILD_LINES } from './lines/build-lines';
import { DRIVE_LINES } from './lines/drive-lines';
import { MOUNT_LINES } from './lines/mount-lines';
import { OFFER_LINES } from './lines/offer-lines';
import { RATING_LINES } from './lines/rating-lines';

/** A set, and the motor that it alone would ask for. */
export interface Asking {
  set: PumpSet;
  own: Motor;
}

/**
 * Everything a supplier needs to offer `asked`, the one motor for all that ask. What nobody tells stays null: it is to be
 * told, and nothing stands in for it. `asOf`: the day of the purchase, YYYY-MM-DD.
 */
export function specification(asking: readonly Asking[], asked: Motor, asOf: string): DemandGroup[] {
  const group = (title: string, lines: readonly Line[]) => ({
    title,
    demands: lines.flatMap((line) => demandOf(line, asking, asked)),
  });
  return [
    group('Rating', [...RATING_LINES, ...DRIVE_LINES]),
    group('Mounting and shaft', MOUNT_LINES),
    group('Build', BUILD_LINES),
    { title: 'Least efficiency by law', demands: lawNotes(asked, asOf) },
    group('With the offer', OFFER_LINES),
  ].filter(({ demands }) => demands.length > 0);
}

/** The line as the sets ask it together; empty where none of them asks it. */
function demandOf(line: Line, asking: readonly Asking[], asked: Motor): Demand[] {
  const { id, label, criterion, isAsked, of } = line;
  const askers = isAsked === undefined ? asking : asking.filter(({ own, set }) => isAsked(own, set));
  const [first] = askers;
  if (first === undefined) return [];
  const each = askers.map(({ own, set }) => ({ tag: set.tag, value: line.value(own, set), set }));
  const told = each.filter(({ value }) => value !== null);
  const ruling = told[0]?.set ?? first.set;
  const texts = new Set(each.map(({ value }) => value));
  const value = of === 'asked' ? line.value(asked, ruling) : joined(told);
  return [
    {
      ...{ id, label, criterion, value },
      why: typeof line.why === 'string' ? line.why : line.why(asked, ruling),
      bySet: texts.size === 1 ? [] : each.map(({ tag, value }) => ({ tag, value })),
    },
  ];
}

const joined = (told: readonly { value: string | null }[]): string | null =>
  [...new Set(told.map(({ value }) => value))].join('; ') || null;
