/** The values something rests on, as one short text, always written alike: with others it is another thing. */
export const figuresOf = (values: Readonly<Record<string, number | string | null>>): string =>
  Object.entries(values)
    .map(([key, value]) => `${key}=${typeof value === 'number' ? short(value) : (value ?? '-')}`)
    .join(',');

/** Six figures: 3.728499357910 is 5 hp, and stays it. */
const short = (value: number) => Number(value.toPrecision(6));
