/**
 * The largest body that any request may have. What a page or route takes it says itself, and that is less; more than
 * this is not even read.
 */
export const MOST_BODY_BYTES = 16 * 1024 * 1024;
