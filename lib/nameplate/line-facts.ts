import type { Problem } from '@/lib/plant/reading';
import type { Fact } from './field-name';
import { scanLine } from './scan-line';

/** What every line of a plate says, as it stood. */
export function lineFacts(text: string): { facts: Fact[]; unread: string[]; problems: Problem[] } {
  const facts: Fact[] = [];
  const unread: string[] = [];
  text.split(/\r\n|\r|\n|\u2028|\u2029/).forEach((line, number) => {
    const scanned = scanLine(line, number);
    facts.push(...scanned.facts);
    unread.push(...scanned.unread);
  });
  return { facts, unread, problems: [] };
}
