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
  const { id, label, criterion, isAsked } = line;
  const askers = isAsked === undefined ? asking : asking.filter(({ own, set }) => isAsked(own, set));
  const [first] = askers;
  if (first === undefined) return [];
  const each = askers.map(({ own, set }) => ({ tag: set.tag, value: line.value(own, set), set }));
  const texts = new Set(each.map(({ value }) => value));
  const ruling = rulingOf(line, each, asked) ?? first.set;
  const value = toldIn(line, each, asked, ruling);
  return [
    {
      ...{ id, label, criterion, value },
      why: typeof line.why === 'string' ? line.why : line.why(asked, ruling),
      bySet: texts.size === 1 ? [] : each.map(({ tag, value }) => ({ tag, value })),
    },
  ];
}

/** What one set asks by itself. */
interface Own {
  value: string | null;
  set: PumpSet;
}

/** The set whose reason stands: the first that asks just what is asked of all, else the first that tells anything. */
function rulingOf(line: Line, each: readonly Own[], asked: Motor): PumpSet | undefined {
  const told = each.filter(({ value }) => value !== null);
  return (told.find(({ value, set }) => value === line.value(asked, set)) ?? told[0])?.set;
}

function toldIn({ of, value, strictest, isNothing }: Line, each: readonly Own[], asked: Motor, ruling: PumpSet) {
  if (isNothing?.(asked) === true && each.some((one) => one.value === null)) return null;
  if (strictest !== undefined) return strictest(each.map(({ set }) => set));
  return of === 'asked' ? value(asked, ruling) : joined(each);
}

/** Each value that is told, once; null: none is. */
const joined = (each: readonly Own[]): string | null =>
  [...new Set(each.flatMap(({ value }) => (value === null ? [] : [value])))].join('; ') || null;
