import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { figuresOf } from '@/lib/units/figures-of';
import type { Doubt, RuleId } from './doubt';

/** What a rule says of one row of a plate; `cell` is the row's field to look at. */
export interface RowDoubt extends Omit<Doubt, 'rule' | 'thing' | 'field'> {
  cell: keyof Rating;
}

/**
 * A question asked of every row of a plate, answered once: the first of the worst rows speaks, the others are named.
 * The figures are those of every row in doubt, so that a row that changes brings the doubt back; `ofPlate` are those that
 * all rows share.
 */
export function doubtOfRows(
  rule: RuleId,
  { ratings }: Pick<Motor, 'ratings'>,
  ask: (row: Rating, line: number) => RowDoubt | null,
  ofPlate: Parameters<typeof figuresOf>[0] = {},
): Doubt | null {
  const found = ratings.flatMap((row, line) => {
    const doubt = ask(row, line);
    return doubt === null ? [] : [{ line, doubt }];
  });
  const worst = found.find(({ doubt }) => doubt.grade === 'wrong') ?? found[0];
  if (worst === undefined) return null;
  const { cell, says, ...rest } = worst.doubt;
  const others = found.filter((one) => one !== worst).map(({ line }) => line + 1);
  return {
    ...rest,
    rule,
    thing: 'motor',
    field: `ratings.${worst.line}.${cell}`,
    says: `${ratings.length > 1 ? `Row ${worst.line + 1}: ` : ''}${says}${too(others)}`,
    figures: [figuresOf(ofPlate), ...found.map(({ line, doubt }) => `${line + 1}:${doubt.figures}`)].join(' ').trim(),
  };
}

const too = (lines: readonly number[]): string =>
  lines.length === 0 ? '' : lines.length === 1 ? ` Row ${lines[0]} too.` : ` Rows ${lines.join(', ')} too.`;
