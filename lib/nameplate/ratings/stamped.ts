import type { Problem } from '@/lib/plant/reading';
import { readAmps } from '@/lib/units/read-amps';
import { readHertz } from '@/lib/units/read-hertz';
import { readPower, type WrittenPower } from '@/lib/units/read-power';
import { readSpeed, type WrittenSpeed } from '@/lib/units/read-speed';
import { readVolts, type WrittenVolts } from '@/lib/units/read-volts';
import type { ReadingOfText } from '@/lib/units/reading-of-text';
import type { Fact, FieldName } from '../field-name';
import { type Connection, readConnection } from './read-connection';
import { readEfficiency, readPf } from './read-share';

/** Everything one row, or the plate as a whole, says about its ratings: lists in the order written. */
export interface Stamped {
  volts: WrittenVolts[];
  hertz: number[];
  hp: number[];
  kw: number[];
  /** Which of the two powers stands first, where both are on one line. */
  firstPower: 'hp' | 'kw' | null;
  rpm: WrittenSpeed[];
  amps: number[][];
  connection: Connection[];
  pf: number[];
  efficiency: number[];
}

/** Reads the facts of one block. The same thing on two lines is one thing; two different things are a problem naming both. */
export function stamped(facts: readonly Fact[], path: string): { value: Stamped; problems: Problem[] } {
  const problems: Problem[] = [];
  const list = <T>(field: FieldName, key: string, read: (text: string) => ReadingOfText<T[]>): T[] => {
    const byLine = new Map<number, { text: string[]; values: T[] }>();
    for (const { text, line } of facts.filter((one) => one.field === field)) {
      const one = read(text);
      problems.push(...(one.ok ? one.doubts : one.problems).map((problem) => ({ ...problem, path: `${path}.${key}` })));
      if (!one.ok || one.value.length === 0) continue;
      const so = byLine.get(line) ?? { text: [], values: [] };
      byLine.set(line, { text: [...so.text, text], values: [...so.values, ...one.value] });
    }
    const different = new Map([...byLine.values()].map((one) => [JSON.stringify(one.values), one]));
    const [only, ...others] = different.values();
    if (!only) return [];
    if (others.length === 0) return only.values;
    const texts = [only, ...others].map(({ text }) => text.join(' / ')).toSorted();
    problems.push({
      path: `${path}.${key}`,
      value: texts.join(', '),
      says: `is stamped as ${texts.join(' and as ')}: which one holds?`,
    });
    return [];
  };
  const powerFacts = facts.filter(({ field }) => field === 'power');
  const hp = list('power', 'hp', powers('hp'));
  const kw = list('power', 'kw', powers('kw'));
  return {
    value: {
      volts: list('volts', 'volts', readVolts),
      hertz: list('hertz', 'hertz', readHertz),
      hp,
      kw,
      firstPower: firstPower(powerFacts),
      rpm: list('rpm', 'rpm', readSpeed),
      amps: list('amps', 'amps', readAmps),
      connection: list('connection', 'connection', readConnection),
      pf: list('pf', 'pf', readPf),
      efficiency: list('efficiency', 'efficiencyPct', readEfficiency),
    },
    problems: unique(problems),
  };
}

/** One of the two kinds of power; the problems of an unreadable one are told once, with kw. */
function powers(key: 'hp' | 'kw') {
  return (text: string): ReadingOfText<number[]> => {
    const all = readPower(text);
    if (!all.ok) return key === 'kw' ? all : { ok: true, value: [], doubts: [] };
    const values = all.value.flatMap((one) => (key in one ? [figureOf(one)] : []));
    return { ok: true, value: values, doubts: values.length > 0 ? all.doubts : [] };
  };
}

const figureOf = (one: WrittenPower): number => ('hp' in one ? one.hp : one.kw);

function firstPower(facts: readonly Fact[]): 'hp' | 'kw' | null {
  const lines = new Set(facts.map(({ line }) => line));
  if (lines.size !== 1) return null;
  const first = facts.toSorted((a, b) => a.at - b.at)[0];
  return first === undefined ? null : /h\.?p/i.test(first.text) ? 'hp' : 'kw';
}

const unique = (problems: Problem[]): Problem[] => [
  ...new Map(problems.map((one) => [JSON.stringify(one), one])).values(),
];
