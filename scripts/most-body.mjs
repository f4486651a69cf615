const MOST_MB = 26;

/**
 * The largest body that any request may have: a file of 25 MB to import. What a page or route takes it says itself, and
 * that is less; more than this is not even read.
 */
export const MOST_BODY_BYTES = MOST_MB * 1024 * 1024;
export const TOO_LARGE = `What was sent is larger than ${MOST_MB} MB.`;
