import type { Token } from './token';

type Measure = Extract<Token, { kind: 'measure' }>;
type Figure = Extract<Token, { kind: 'figure' }>;

/**
 * Puts figures and measures that stand beside each other together. In a row of them each has one neighbour it can
 * belong to, or the row cannot be paired and stays as it is: "5 HP 1750 RPM" and "HP 5 RPM 1750" both have one way.
 */
export function pairTokens(tokens: readonly Token[]): Token[] {
  return pairRuns(pairRuns(glue(unitsFirst(tokens)), true), false);
}

/**
 * "50 Hz: 400 V 4 kW": a colon behind a unit is no sign that its figure follows, where every figure of the row has its
 * unit behind it.
 */
function unitsFirst(tokens: readonly Token[]): Token[] {
  const out = [...tokens];
  for (let from = 0; from < out.length; from += 1) {
    if (out[from]?.kind !== 'figure') continue;
    let to = from;
    while (out[to]?.kind === 'figure' && out[to + 1]?.kind === 'measure') to += 2;
    const isWhole = from < to && !isPart(out[to]) && !isPart(out[from - 1]);
    for (let i = from + 1; isWhole && i < to; i += 2) out[i] = { ...(out[i] as Measure), isFirm: false };
    from = Math.max(from, to - 1);
  }
  return out;
}

const isPart = (token: Token | undefined): boolean => token?.kind === 'figure' || token?.kind === 'measure';

const joined = (measure: Measure, figure: Figure): Token => ({
  kind: 'fact',
  field: measure.field,
  text: `${figure.text} ${measure.unit}`.trim(),
  at: Math.min(measure.at, figure.at),
  end: Math.max(measure.end, figure.end),
  cell: figure.cell,
});

/** "5,5kW" and "HP: 5" leave no choice; neither does "VOLTS 460 V". */
function glue(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    const one = tokens[i] as Token;
    const next = tokens[i + 1];
    const third = tokens[i + 2];
    const last = out.at(-1);
    if (
      one.kind === 'figure' &&
      next?.kind === 'measure' &&
      !next.isFirm &&
      (next.at === one.end || isRepeat(last, next))
    ) {
      if (last && isRepeat(last, next)) out.pop();
      out.push({ ...joined(next, one), ...(last && isRepeat(last, next) ? { at: last.at } : {}) });
      i += 1;
    } else if (one.kind === 'figure' && next?.kind === 'measure' && isRepeat(third, next) && third.cell === one.cell) {
      out.push({ ...joined(next, one), end: third.end }); // "4 kW power"
      i += 2;
    } else if (
      one.kind === 'measure' &&
      next?.kind === 'figure' &&
      (one.isFirm || (one.end === next.at && one.end - one.at > 1)) &&
      !(third?.kind === 'measure' && isRepeat(one, third))
    ) {
      out.push(joined(one, next));
      i += 1;
    } else out.push(one);
  }
  return out;
}

/** The name of the quantity before the figure and its unit after it. */
const isRepeat = (name: Token | undefined, unit: Measure): name is Measure =>
  name?.kind === 'measure' && name.field === unit.field && (name.unit === '' || name.unit === unit.unit);

function pairRuns(tokens: readonly Token[], isByCell: boolean): Token[] {
  const out: Token[] = [];
  let run: (Measure | Figure)[] = [];
  const close = () => {
    out.push(...pairRun(run));
    run = [];
  };
  for (const token of tokens) {
    if (token.kind !== 'measure' && token.kind !== 'figure') {
      close();
      out.push(token);
      continue;
    }
    if (isByCell && run[0] && run[0].cell !== token.cell) close();
    run.push(token);
  }
  close();
  return out;
}

function pairRun(run: (Measure | Figure)[]): Token[] {
  const pairs: Token[] = [];
  for (let i = 0; i < run.length; i += 2) {
    const one = run[i];
    const other = run[i + 1];
    if (one?.kind === 'measure' && other?.kind === 'figure') pairs.push(joined(one, other));
    else if (one?.kind === 'figure' && other?.kind === 'measure') pairs.push(joined(other, one));
    else return run;
  }
  return pairs;
}
