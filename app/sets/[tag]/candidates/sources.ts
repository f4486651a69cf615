import type { Source } from '@/lib/matching/offer/candidate';

export const SOURCES: readonly Source[] = ['shelf', 'set', 'buy'];

/** So many of a source are shown until all of it are asked for. */
export const SHOWN = 10;
