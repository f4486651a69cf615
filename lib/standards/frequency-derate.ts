import { citeOf } from './table';
import { frequencyDerates } from './tables/frequency-derate';

export interface FrequencyDerate {
  /** Share of the 60 Hz output, never above five sixths. */
  share: number;
  cite: string;
}

/**
 * What a 60 Hz motor gives on 50 Hz. `voltsRatio`: the 50 Hz supply volts over the plate's 60 Hz volts. Anything the
 * table does not print (another enclosure, eight poles) takes the closed motor's figure, the lower. Null above the last
 * printed voltage and its 5 per cent: there the iron is over-fluxed and nothing is printed.
 */
export function frequencyDerate(enclosure: 'open' | 'closed', voltsRatio: number): FrequencyDerate | null {
  const columns = enclosure === 'open' ? OPEN : CLOSED;
  const [first] = columns;
  if (first === undefined) return null;
  // Below the first printed voltage and its 5 per cent the flux falls, and the output with it.
  if (voltsRatio < first.ratio * (1 - SUPPLY_WITHIN))
    return { share: Math.min(first.share, FIVE_SIXTHS) * (voltsRatio / first.ratio), cite: first.cite };
  for (const { ratio, share, cite } of columns)
    if (voltsRatio <= ratio + SAME_COLUMN) return { share: Math.min(share, FIVE_SIXTHS), cite };
  const last = columns[columns.length - 1];
  if (last === undefined || voltsRatio > last.ratio * (1 + SUPPLY_WITHIN)) return null;
  return { share: Math.min(last.share, FIVE_SIXTHS), cite: last.cite };
}

/** Speed falls to five sixths; torque must not rise (read in one text). */
const FIVE_SIXTHS = 5 / 6;
/** The table's own condition on the supply. */
const SUPPLY_WITHIN = 0.05;
/** 383 V, which keeps 460 V / 60 Hz to the letter, reads from the 380 V column. */
const SAME_COLUMN = 0.01;

// The three printed voltage pairs are one ratio each; the 460 V pair stands for all of them.
const columnsOf = (enclosure: 'open' | 'closed') =>
  frequencyDerates.rows
    .filter((row) => row.enclosure === enclosure && row.volts60 === 460)
    .map(({ volts60, volts50, share }) => ({
      ratio: volts50 / volts60,
      share: share[0],
      cite: citeOf(frequencyDerates.source.clause, share[1]),
    }));

const OPEN = columnsOf('open');
const CLOSED = columnsOf('closed');
