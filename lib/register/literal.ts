/**
 * Text as it must be given to a comparison that ignores case: the database takes it as a pattern, in which %, _ and \\
 * would mean something else, and a last \\ would be an error.
 */
export const literal = (text: string): string => text.replace(/[\\%_]/g, '\\$&');
