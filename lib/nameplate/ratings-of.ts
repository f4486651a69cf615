import type { Problem } from '@/lib/plant/reading';
import type { Fact, FieldName } from './field-name';
import type { PlateMotor, RatingInput } from './plate-reading';
import { plausible } from './plausible';
import { rows } from './ratings/rows';
import { stamped } from './ratings/stamped';

/** The rows of ratings of a plate, and what they tell about the whole motor. */
export function ratingsOf(facts: readonly Fact[], motor: PlateMotor): { motor: PlateMotor; problems: Problem[] } {
  const problems: Problem[] = [];
  const ratings: RatingInput[] = [];
  const poles = new Set<number>();
  for (const block of blocksOf(facts.filter(({ field }) => ELECTRIC.has(field)))) {
    const read = stamped(block, `ratings.${ratings.length}`);
    for (const { poles: beside } of read.value.rpm) if (beside !== null) poles.add(beside);
    const spread = rows(read.value, ratings.length);
    problems.push(...read.problems, ...spread.problems);
    ratings.push(...spread.rows);
  }
  const checked = plausible(ratings, {
    ...motor,
    ...(motor.poles == null && poles.size === 1 ? { poles: [...poles][0] } : {}),
  });
  return { motor: checked.motor, problems: [...problems, ...checked.problems] };
}

const ELECTRIC = new Set<FieldName>(['volts', 'hertz', 'power', 'rpm', 'amps', 'connection', 'pf', 'efficiency']);

/**
 * Lines that each hold a voltage or a frequency with a figure of the same kind are rows of their own; what stands
 * elsewhere holds for all of them. Else the plate is one block.
 */
function blocksOf(facts: readonly Fact[]): Fact[][] {
  const lines = new Map<number, Fact[]>();
  for (const fact of facts) lines.set(fact.line, [...(lines.get(fact.line) ?? []), fact]);
  const rowLines = [...lines.values()].filter(
    (line) => has(line, 'volts', 'hertz') && has(line, 'power', 'rpm', 'amps', 'pf', 'efficiency'),
  );
  const isShared = rowLines.some((line, i) =>
    rowLines.some((other, j) => j > i && line.some(({ field }) => has(other, field))),
  );
  if (rowLines.length < 2 || !isShared) return facts.length === 0 ? [] : [[...facts]];
  const taken = new Set(rowLines.map((line) => line[0]?.line));
  const others = facts.filter((fact) => !taken.has(fact.line));
  return rowLines.map((line) => [...line, ...others.filter(({ field }) => !has(line, field))]);
}

const has = (line: readonly Fact[], ...fields: FieldName[]): boolean =>
  line.some(({ field }) => fields.includes(field));
