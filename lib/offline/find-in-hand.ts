import { lookAlikeOf, normOf } from '@/lib/plant/look-alike';
import type { PackSet } from './pack';

/** What a set is found by. */
type Findable = Pick<PackSet, 'tag' | 'code' | 'service' | 'area' | 'pump'>;

/** As many as one answer holds. */
const MOST = 25;
/** A tag with more errors than this share of its length is another tag. */
const ERRORS_PER_LETTER = 0.4;

/**
 * The sets that what was typed may mean: by tag (exact, look-alike letters, beginning), then by words of service, area
 * and pump, then by a tag typed wrong. Likeliest first.
 */
export function findInHand<T extends Findable>(sets: Iterable<T>, typed: string): T[] {
  const [norm, look] = [normOf(typed), lookAlikeOf(typed)];
  if (norm === '') return [];
  const words = (typed.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).filter((word) => word.length > 1);
  const placed: { set: T; place: number }[] = [];
  for (const set of sets) {
    const place = placeOf(set, norm, look, words);
    if (place !== null) placed.push({ set, place });
  }
  return placed
    .sort((a, b) => a.place - b.place || (a.set.tag < b.set.tag ? -1 : 1))
    .slice(0, MOST)
    .map(({ set }) => set);
}

function placeOf(set: Findable, norm: string, look: string, words: readonly string[]): number | null {
  const held = normOf(set.tag);
  const heldLook = lookAlikeOf(set.tag);
  if (held === norm || set.code === norm) return 0;
  if (heldLook === look) return 1;
  if (held.startsWith(norm) || heldLook.startsWith(look)) return 2;
  const text = [set.tag, set.service, set.area, set.pump?.description, set.pump?.kind, set.pump?.maker]
    .filter((part) => typeof part === 'string')
    .join(' ')
    .toLowerCase();
  if (words.length > 0 && words.every((word) => text.includes(word))) return 3;
  const most = Math.ceil(heldLook.length * ERRORS_PER_LETTER);
  // Words without a figure in them are no tag typed wrong.
  if (!/\d/.test(norm) || look.length < 3 || Math.abs(heldLook.length - look.length) > most) return null;
  const errors = errorsBetween(heldLook, look, most);
  return errors === null ? null : 4 + errors;
}

/** Letters to change, add or drop between two words (Levenshtein); null: more than `most`. */
function errorsBetween(a: string, b: string, most: number): number | null {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const errors = Math.min(change, (row[j] as number) + 1, (next[j - 1] as number) + 1);
      next.push(errors);
      least = Math.min(least, errors);
    }
    if (least > most) return null;
    row = next;
  }
  const errors = row[b.length] as number;
  return errors > most ? null : errors;
}
