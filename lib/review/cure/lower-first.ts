/** A sentence that goes on behind another: only its first letter changes, "Hz" stays. */
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
