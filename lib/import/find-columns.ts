import type { Field, FieldId, ImportKind } from './field';
import { fieldOf, fieldsOf, headingOf } from './fields';
import { findHeadings, isHeadingRow } from './find-headings';
import { type HeadingMatch, type KnownHeadings, LINE, WHY_NOT } from './match-heading';
import { normalHeading } from './normal-heading';
import { isNotKnown } from './not-known';
import type { SheetRow } from './sheet-row';

export { normalHeading } from './normal-heading';

export interface FoundColumn {
  index: number;
  /** As it stands in the sheet, a group's heading before its own. */
  heading: string;
  field: FieldId | null;
  /** The unit of figures that carry none of their own. */
  unit: string | null;
  because: 'remembered' | 'name' | 'content' | null;
  /** The first few different things that stand below it. */
  examples: string[];
}

export interface FoundColumns {
  headingLines: number[];
  /** Null: there is no row of data. */
  firstDataLine: number | null;
  columns: FoundColumn[];
  /** `column`: the index it is about; null: the sheet. */
  problems: { column: number | null; says: string }[];
}

/**
 * Which column tells what, from the first rows of a sheet: by what a person said before, by the heading, or by what
 * stands below. `known` is what the site remembers of its headings, each in small letters and digits. A person confirms it.
 */
export function findColumns(kind: ImportKind, rows: readonly SheetRow[], known: KnownHeadings): FoundColumns {
  const headings = findHeadings(kind, rows, known);
  const below = rows.slice(headings?.end ?? 0).filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const told = (headings?.columns ?? []).map(({ heading }, index) => ({ index, heading }));
  const data = below.filter(({ cells }) => !isHeadingRow(cells, told));
  const width = Math.min(MOST_COLUMNS, Math.max(told.length, ...data.map(({ cells }) => cells.length), 0));
  const claims = Array.from({ length: width }, (_, index): Claim => {
    const found = headings?.columns[index];
    return {
      index,
      heading: found?.heading ?? '',
      match: found?.match ?? null,
      texts: data.map(({ cells }) => cells[index]?.trim() ?? '').filter((text) => !isNotKnown(text)),
    };
  });
  const problems: FoundColumns['problems'] = [];
  if (headings === null && data.length > 0)
    problems.push({ column: null, says: 'No row names its columns: they are told by what stands in them.' });
  const winners = winnersOf(kind, claims, problems);
  const taken = new Set([...winners.values()].map(({ field }) => field));
  const byContent = contentOf(
    kind,
    claims.filter(({ index, match }) => match === null && !winners.has(index)),
    taken,
  );
  const isRefusedFile = claims.some(({ heading }) => normalHeading(heading) === normalHeading(WHY_NOT));
  return {
    headingLines: headings?.lines ?? [],
    firstDataLine: data[0]?.line ?? null,
    columns: claims.map(({ index, heading, match, texts }): FoundColumn => {
      const examples = [...new Set(texts)].slice(0, 3).map((text) => text.slice(0, 80));
      const own = { index, heading, examples };
      const isLine = isRefusedFile && normalHeading(heading) === normalHeading(LINE);
      if (isLine) return { ...own, field: null, unit: null, because: 'name' };
      const won = winners.get(index);
      if (won) return { ...own, field: won.field, unit: won.unit, because: won.because };
      const content = byContent.get(index);
      if (content) return { ...own, field: content, unit: null, because: 'content' };
      return { ...own, field: null, unit: null, because: match?.field === null ? match.because : null };
    }),
    problems,
  };
}

const MOST_COLUMNS = 500;

interface Claim {
  index: number;
  heading: string;
  match: HeadingMatch | null;
  texts: string[];
}

/** Of the columns that claim one field the better one has it: what a person said, the nearer name, the fuller column. */
function winnersOf(kind: ImportKind, claims: readonly Claim[], problems: FoundColumns['problems']) {
  const winners = new Map<number, HeadingMatch>();
  const claimed = new Map<FieldId, { claim: Claim; match: HeadingMatch; worth: number }[]>();
  for (const claim of claims) {
    const { match, texts, index } = claim;
    if (match === null || match.field === null) continue;
    const field = fieldOf(kind, match.field) as Field;
    const worth = match.score * 1_000 + 100 * share(field, texts) + Math.min(texts.length, 200) / 4 - index / 1_000;
    claimed.set(match.field, [...(claimed.get(match.field) ?? []), { claim, match, worth }]);
  }
  for (const [id, all] of claimed) {
    const [best, ...others] = all.toSorted((a, b) => b.worth - a.worth);
    if (!best) continue;
    winners.set(best.claim.index, best.match);
    for (const { claim } of others)
      problems.push({
        column: claim.index,
        says: `"${claim.heading}" names ${headingOf(fieldOf(kind, id) as Field)} too: "${best.claim.heading}" is taken for it.`,
      });
  }
  return winners;
}

const share = (field: Field, texts: readonly string[]): number =>
  texts.length === 0 ? 0 : texts.reduce((sum, text) => sum + field.holds(text), 0) / texts.length;

/** The fields of columns that no heading names: the likeliest first, each field once. */
function contentOf(kind: ImportKind, claims: readonly Claim[], taken: ReadonlySet<FieldId | null>) {
  const chances = claims.flatMap(({ index, heading, texts }) => {
    const least = heading === '' ? LEAST_LIKELY : LEAST_LIKELY_UNDER_A_HEADING;
    return fieldsOf(kind).flatMap((field) => {
      if (taken.has(field.id)) return [];
      const chance = share(field, texts.slice(0, 100));
      return chance >= least ? [{ index, id: field.id, chance }] : [];
    });
  });
  const found = new Map<number, FieldId>();
  const used = new Set<FieldId>();
  for (const { index, id } of chances.toSorted((a, b) => b.chance - a.chance || a.index - b.index)) {
    if (found.has(index) || used.has(id)) continue;
    found.set(index, id);
    used.add(id);
  }
  return found;
}

const LEAST_LIKELY = 0.55;
/** A heading that nobody knows says that something else is meant: only what can hardly be anything else is taken. */
const LEAST_LIKELY_UNDER_A_HEADING = 0.9;
