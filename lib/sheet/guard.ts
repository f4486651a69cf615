/** What a spreadsheet program takes for a formula at the start of a cell (OWASP, CSV Injection), and what it skips before. */
const DANGEROUS = /^\s*[=+\-@\t\r]/;

/**
 * A text cell that no program runs: an apostrophe stands before what looks like a formula. A text that begins with one
 * before such a thing gets another, so that the way back is exact. Figures are no text and are never guarded.
 */
export const guarded = (text: string): string => (NEEDS.test(text) ? `'${text}` : text);

/** The text as it was before it was guarded. */
export const unguarded = (text: string): string => (GUARDED.test(text) ? text.slice(1) : text);

const NEEDS = new RegExp(`^'*(?:${DANGEROUS.source.slice(1)})`);
const GUARDED = new RegExp(`^'+(?:${DANGEROUS.source.slice(1)})`);
