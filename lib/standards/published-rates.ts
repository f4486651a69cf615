import type { Status } from './dimension';
import { citeOf, statusOf } from './table';
import { type FailureRateRow, failureRates } from './tables/failure-rates';

/** A published rate of failure, as failures of one set in a year. */
export interface PublishedRate {
  /** "handbook-greatest", "refinery". */
  id: string;
  what: string;
  of: 'motor' | 'pump';
  perYear: number;
  status: Status;
  cite: string;
}

const HOURS_OF_YEAR = 8760;
const DAYS_OF_YEAR = 365;

/**
 * Every published rate; a printed range as its two ends. `hoursPerYear`: hours run in a year, by which a rate of an hour
 * run becomes one of a year; null, as if everything ran all year (8760 h).
 */
export const publishedRates = (hoursPerYear: number | null): PublishedRate[] =>
  failureRates.rows.flatMap((row) => {
    const [least, greatest] = row.printed;
    const isRange = least[0] !== greatest[0];
    return (isRange ? [least, greatest] : [least]).map(([printed, texts, source], i) => ({
      id: isRange ? `${row.id}-${i === 0 ? 'least' : 'greatest'}` : row.id,
      what: isRange ? `${row.what}: the ${i === 0 ? 'least' : 'greatest'}` : row.what,
      of: row.of,
      perYear: perYearOf(row, printed, hoursPerYear === null ? HOURS_OF_YEAR : hoursPerYear),
      status: statusOf(texts),
      cite: citeOf(failureRates.source.texts[source] as string, texts),
    }));
  });

function perYearOf(row: FailureRateRow, printed: number, hoursPerYear: number): number {
  switch (row.in) {
    case 'perHour':
      return printed * hoursPerYear;
    case 'perYear':
      return printed;
    case 'days':
      return DAYS_OF_YEAR / printed;
    case 'months':
      return 12 / printed;
    case 'years':
      return 1 / printed;
  }
}
