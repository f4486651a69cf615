import type { Problem } from '@/lib/plant/reading';
import type { Fact } from './field-name';
import { type Column, header } from './header';
import { plainLine } from './plain-line';
import { scanLine } from './scan-line';
import { tableRow } from './table-row';

/** What every line of a plate says, as it stood; lines below a line of headings are read as a table. */
export function lineFacts(text: string): { facts: Fact[]; unread: string[]; problems: Problem[] } {
  const facts: Fact[] = [];
  const unread: string[] = [];
  const problems: Problem[] = [];
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|[\r\n\u2028\u2029\u0085]/);
  let table: { columns: Column[]; at: number; rows: number } | null = null;
  for (const [number, original] of lines.entries()) {
    const line = plainLine(original);
    if (line.trim() === '' || /^[\s|+=_-]+$/.test(line)) continue;
    const headings = header(line);
    if (headings !== null) {
      if (table?.rows === 0) unread.push((lines[table.at] as string).trim());
      table = { columns: headings, at: number, rows: 0 };
      continue;
    }
    const scanned = scanLine(original, number);
    if (
      table !== null &&
      (table.columns.length > 1 || table.rows === 0) &&
      isRow(line, table.columns, scanned.isLabelled)
    ) {
      table.rows += 1;
      const row = tableRow(table.columns, line, plainLine(lines[table.at] as string), number);
      if (row !== null) {
        facts.push(...row);
        if (table.columns.some(({ field }) => field === null))
          unread.push(`${(lines[table.at] as string).trim()}: ${original.trim()}`);
        continue;
      }
      unread.push(original.trim());
      problems.push({
        path: 'ratings',
        value: original.trim().slice(0, 80),
        says: `does not stand under its ${table.columns.length} headings one by one: which figure belongs to which?`,
      });
      continue;
    }
    if (table?.rows === 0) unread.push((lines[table.at] as string).trim());
    table = null;
    facts.push(...scanned.facts);
    unread.push(...scanned.unread);
    problems.push(...scanned.problems);
  }
  if (table?.rows === 0) unread.push((lines[table.at] as string).trim());
  return { facts, unread, problems };
}

/** A line of figures, or of as many words as there are headings, that names nothing itself. */
function isRow(line: string, columns: readonly Column[], isLabelled: boolean): boolean {
  if (isLabelled) return false;
  if (columns.length === 1) return true;
  return (
    /^\s*[\d.½¼¾⅓⅔|Δ]/.test(line) ||
    line.trim().split(/\s{2,}|\t|\|/).length === columns.length ||
    line.trim().split(/\s+/).length === columns.length
  );
}
