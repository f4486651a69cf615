/** What can be seen, heard or smelt of a failure, in one tap. Common practice, no source. */
export const SEEN = ['trip', 'smell', 'noise', 'seized', 'hot', 'leak', 'will-not-start'] as const;
export type Seen = (typeof SEEN)[number];

export const SEEN_WORDS: Record<Seen, string> = {
  trip: 'Tripped',
  smell: 'Smell or smoke',
  noise: 'Noise or shaking',
  seized: 'Seized',
  hot: 'Too hot',
  leak: 'Leak',
  'will-not-start': 'Will not start',
};

/** What was seen and said of a fault, as one line. */
export function faultText({ seen, says }: { seen: readonly string[]; says: string | null }): string {
  const words = SEEN.filter((one) => seen.includes(one)).map((one) => SEEN_WORDS[one]);
  const first = words.map((word, i) => (i === 0 ? word : word.toLowerCase())).join(', ');
  if (says === null) return first;
  return first === '' ? says : `${first}: ${says}`;
}
