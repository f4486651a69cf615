import type { Query } from '@/app/lists/asked-for';
import type { FrameFound } from '@/lib/standards/measured/frames-measured';
import { type StandardRating, standardRatings } from '@/lib/standards/standard-ratings';
import { polesOfSpeed, synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { readNumber } from '@/lib/units/read-number';

/** What can be told of a motor without its plate, beside what a tape tells. */
export const SIGHT = ['rpm', 'hertz', 'leads', 'enclosure'] as const;
export type Sight = (typeof SIGHT)[number];

export interface SightAsked {
  typed: Partial<Record<Sight, string>>;
  rpm: number | null;
  hertz: number | null;
  leads: number | null;
  enclosure: string | null;
}

export function sightAsked(query: Query): SightAsked {
  const typed: SightAsked['typed'] = {};
  for (const name of SIGHT) {
    const value = query[name];
    const text =
      typeof value === 'string'
        ? value
            .replaceAll(/\p{Cc}/gu, ' ')
            .trim()
            .slice(0, 20)
        : '';
    if (text !== '') typed[name] = text;
  }
  const number = (name: Sight, min: number, max: number) => {
    const read = readNumber(typed[name] ?? '', { min, max });
    return typed[name] !== undefined && read.ok ? read.value : null;
  };
  return {
    typed,
    rpm: number('rpm', 20, 4_000),
    hertz: typed.hertz === '50' ? 50 : typed.hertz === '60' ? 60 : null,
    leads: [3, 6, 9, 12].find((count) => String(count) === typed.leads) ?? null,
    enclosure: ENCLOSURES.find(({ value }) => value === typed.enclosure)?.value ?? null,
  };
}

export const ENCLOSURES = [
  { value: 'TEFC', words: 'Closed, with a fan under a cowl at the far end' },
  { value: 'TENV', words: 'Closed, without a fan' },
  { value: 'ODP', words: 'Open: air goes through it' },
] as const;

/** The poles that its speed under load tells; null: not told, or no such motor at that frequency. */
export const polesSeen = ({ rpm, hertz }: SightAsked): number | null =>
  rpm === null || hertz === null ? null : polesOfSpeed(rpm, hertz);

/** What the speed says, with its sum. */
export function speedSentence(asked: SightAsked): string | null {
  const { rpm, hertz } = asked;
  if (rpm === null || hertz === null) return null;
  const poles = polesSeen(asked);
  if (poles === null)
    return `${figure(rpm, 0)} rpm is no speed under load of a mains motor at ${hertz} Hz: is it fed by a drive, or geared?`;
  const field = synchronousSpeed(poles, hertz);
  return `${poles} poles: 120 × ${hertz} / ${poles} = ${figure(field, 0)} rpm, and it turns ${figure(field - rpm, 0)} rpm slower under load.`;
}

/** What so many leads in the box say of the winding (NEMA MG 1 Part 2, IEC 60034-8: the marks tell for certain). */
export const LEADS_SAY: Readonly<Record<number, string>> = {
  3: 'Three leads: one voltage, one way to connect it. It can be neither star-delta started nor told from the box whether it is star or delta inside.',
  6: 'Six leads: both ends of every winding, for star or delta – or a part-winding motor, whose marks tell (1, 2, 3 and 7, 8, 9).',
  9: 'Nine leads: two voltages, one twice the other; star or delta inside shows by which leads are joined in pairs (marks 1 to 9).',
  12: 'Twelve leads: two voltages and star or delta; it may be started in several ways.',
};

/** Ratings that the standards assign to the frames left: what it may be for, and no proof that it is. */
export function usualRatings(fits: readonly FrameFound[], poles: number | null): StandardRating[] {
  const frames = new Set(fits.map(({ option }) => option.frame.split(' ')[0]?.replace(/^(\d+TS?)[CD]H?$/, '$1')));
  const systems = [...new Set(fits.map(({ option }) => option.system))];
  return systems.flatMap((system) =>
    standardRatings(system).filter((one) => frames.has(one.frame) && (poles === null || one.poles === poles)),
  );
}
