import { readNumber } from '@/lib/units/read-number';
import { MOST, type PhaseAmps, type Readings, type ReadingValue } from './readings';
import { STEP_IDS } from './step-ids';

/** Readings as they were typed and ticked, by the names of their fields. */
export interface ReadingTexts {
  ticked: readonly string[];
  rotation: string;
  insulationMohm: string;
  overloadA: string;
  softFootMm: string;
  offsetMm: string;
  gapMmPer100: string;
  ampsL1: string;
  ampsL2: string;
  ampsL3: string;
}

export const VALUE_NAMES: Readonly<Record<ReadingValue, string>> = {
  insulationMohm: 'Insulation',
  overloadA: 'Overload setting',
  softFootMm: 'Soft foot',
  offsetMm: 'Offset of the shafts',
  gapMmPer100: 'Gap per 100 mm',
};
export const AMPS_FIELDS = ['ampsL1', 'ampsL2', 'ampsL3'] as const;
const VALUES = Object.keys(VALUE_NAMES) as ReadingValue[];

/** What was typed into fields of these names; what is not there was not typed. */
export function textsFrom(one: (name: string) => string, many: (name: string) => readonly string[]): ReadingTexts {
  const named = <N extends string>(names: readonly N[]) =>
    Object.fromEntries(names.map((name) => [name, one(name)])) as Record<N, string>;
  return { ticked: many('ticked'), rotation: one('rotation'), ...named(VALUES), ...named(AMPS_FIELDS) };
}

export const NO_TEXTS: ReadingTexts = textsFrom(
  () => '',
  () => [],
);

/** Readings as they stand in the fields of a form. */
export function textsOf({ ticked, rotation, amps, ...values }: Readings): ReadingTexts {
  const [ampsL1, ampsL2, ampsL3] = amps;
  const known: Record<string, string | number | null> = { rotation, ampsL1, ampsL2, ampsL3, ...values };
  return textsFrom(
    (name) => (known[name] === null ? '' : String(known[name])),
    () => ticked,
  );
}

export interface ReadingProblem {
  /** The name of the field. */
  path: string;
  says: string;
}

/** Reads what was typed, with every problem at once; null where nothing was, or nothing that could be read. */
export function readingsOf(texts: ReadingTexts): { readings: Readings; problems: ReadingProblem[] } {
  const problems: ReadingProblem[] = [];
  const figureOf = (path: Exclude<keyof ReadingTexts, 'ticked'>, name: string, max: number): number | null => {
    const text = texts[path].trim();
    if (text === '') return null;
    const read = readNumber(text, { min: 0, max });
    if (read.ok) return read.value;
    for (const { says } of read.problems) problems.push({ path, says: `${name}: “${text}” ${says}.` });
    return null;
  };
  const value = (name: ReadingValue) => figureOf(name, VALUE_NAMES[name], MOST[name]);
  const amps: PhaseAmps = [
    figureOf('ampsL1', 'Amps of L1', MOST.amps),
    figureOf('ampsL2', 'Amps of L2', MOST.amps),
    figureOf('ampsL3', 'Amps of L3', MOST.amps),
  ];
  const { rotation } = texts;
  const readings: Readings = {
    ticked: STEP_IDS.filter((id) => texts.ticked.includes(id)),
    rotation: rotation === 'right' || rotation === 'wrong' ? rotation : null,
    insulationMohm: value('insulationMohm'),
    overloadA: value('overloadA'),
    softFootMm: value('softFootMm'),
    offsetMm: value('offsetMm'),
    gapMmPer100: value('gapMmPer100'),
    amps,
  };
  if (readings.overloadA === 0)
    problems.push({ path: 'overloadA', says: `${VALUE_NAMES.overloadA}: must be above 0 A.` });
  return { readings, problems };
}
