import { figure } from '@/lib/units/figure';
import { readNumber } from '@/lib/units/read-number';
import { readPower, type WrittenPower } from '@/lib/units/read-power';
import { SPECIAL_BUILDS, type SpecialBuild } from './build';

/** One line of a price list: what it names, and what one such motor is taken to cost. */
export interface ListedPrice {
  /** Of the text it was read from, from 1. */
  line: number;
  /** As it is stamped: a line in kW is of motors rated in kW, one in hp of those rated in hp. */
  power: WrittenPower;
  /** Null: of any. */
  poles: number | null;
  frame: string | null;
  /** How it is built, and no otherwise; empty: plain. */
  builds: readonly SpecialBuild[];
  price: number;
}

/** More than this is no list that a person types. */
const MOST_LINES = 200;
const PRICE = { min: 0.01, max: 10_000_000 };
const EXAMPLE = '“5.5 kW: 640” or “7.5 hp, 4 poles, 213T, washdown: 720”';

/** A price list as it is typed or pasted, a line a rating. What cannot be read is told line by line, with what would be right. */
export function readPriceList(text: string): { prices: ListedPrice[]; problems: string[] } {
  const prices: ListedPrice[] = [];
  const problems: string[] = [];
  const lineOf = new Map<string, number>();
  const lines = text.split(/\r\n|\r|\n/);
  lines.slice(0, MOST_LINES).forEach((written, i) => {
    if (written.trim() === '') return;
    const read = readLine(written.trim(), i + 1);
    const named = typeof read === 'string' ? null : nameOf(read);
    const before = named === null ? undefined : lineOf.get(named);
    const says =
      typeof read === 'string'
        ? read
        : before === undefined
          ? null
          : `line ${before} prices the same: leave one of them.`;
    if (says !== null) problems.push(`Line ${i + 1}, “${short(written.trim())}”: ${says}`);
    else if (typeof read !== 'string' && named !== null) {
      lineOf.set(named, read.line);
      prices.push(read);
    }
  });
  if (lines.length > MOST_LINES)
    problems.push(`The list has ${lines.length} lines, and ${MOST_LINES} are read: leave some out.`);
  return { prices, problems };
}

/** What a line names, in one way however it was written: "5.5 kW, 4-pole, washdown". */
export function nameOf({ power, poles, frame, builds }: Omit<ListedPrice, 'line' | 'price'>): string {
  const size = 'hp' in power ? `${figure(power.hp, 3)} hp` : `${figure(power.kw, 3)} kW`;
  return [size, poles === null ? null : `${poles}-pole`, frame, ...builds].filter((part) => part !== null).join(', ');
}

/** The line as read; a text: what is wrong with it. */
function readLine(text: string, line: number): ListedPrice | string {
  const parts = /^(.*\S)\s*[:=;\t]\s*(\S.*)$/.exec(text);
  if (parts === null) return `a line is a rating, a colon and a price, such as ${EXAMPLE}.`;
  const rating = /^(.*?\d.*?)\s?(kw|hp|w|ps|cv)\b[\s,]*(.*)$/i.exec(parts[1] as string);
  if (rating === null) return `tell the power with its unit first, kW or hp, such as ${EXAMPLE}.`;
  const power = readPower(`${rating[1]} ${rating[2]}`);
  const [size, ...others] = power.ok ? power.value : [];
  if (!power.ok) return `the power ${saidOf(power.problems)}: write it as in ${EXAMPLE}.`;
  if (size === undefined || others.length > 0) return `one power a line, such as ${EXAMPLE}.`;
  const price = readNumber(parts[2] as string, PRICE);
  if (!price.ok) return `the price ${saidOf(price.problems)}: write the figure alone, such as 640 or 1450.50.`;
  const words = wordsOf(rating[3] as string);
  return typeof words === 'string' ? words : { line, power: size, ...words, price: price.value };
}

const saidOf = (problems: readonly { value: string | null; says: string }[]) =>
  problems.map(({ value, says }) => `“${value === null ? '' : value}” ${says}`).join(', ');

/** Poles, frame and build behind the power; a text: what is wrong with them. */
function wordsOf(text: string): Pick<ListedPrice, 'poles' | 'frame' | 'builds'> | string {
  let [poles, frame]: [number | null, string | null] = [null, null];
  const builds = new Set<SpecialBuild>();
  const words = text.replace(/\b(\d{1,2})[\s-]?(?:poles?|p)\b/gi, '$1-pole');
  for (const word of words.split(/[\s,]+/).filter((one) => one !== '')) {
    const build = SPECIAL_BUILDS.find((one) => one === word.toLowerCase());
    const ofPoles = /^(\d{1,2})-pole$/.exec(word)?.[1];
    if (build !== undefined) builds.add(build);
    else if (ofPoles !== undefined) {
      if (poles !== null) return 'the poles stand there twice: a line is of one motor.';
      poles = Number(ofPoles);
      if (poles < 2 || poles % 2 !== 0) return `there is no motor of ${poles} poles: write 2, 4, 6, 8 and so on.`;
    } else if (/^\d{2,4}[A-Z]{0,4}$/i.test(word)) {
      if (frame !== null) return `“${frame}” and “${word}” are two frames: a line is of one motor.`;
      frame = word.toUpperCase();
    } else
      return `“${short(word)}” is no number of poles (“4 poles”), frame (“132S”) or build (${SPECIAL_BUILDS.join(', ')}).`;
  }
  return { poles, frame, builds: SPECIAL_BUILDS.filter((one) => builds.has(one)) };
}

const short = (text: string) => (text.length > 60 ? `${text.slice(0, 57)}...` : text);
