import { type Cell, type CellReading, refused, told } from './cell';

/**
 * A day as YYYY-MM-DD. With dots the day stands first (common practice, no source); with slashes or dashes it may stand
 * first or second, and where both are possible that is a problem naming both.
 */
export function dayCell({ text, type }: Cell): CellReading<string> {
  if (text.length > 40) return refused(WRITE);
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ][\d:.Z+-]{1,20})?$/.exec(text);
  if (iso) return dayOf(iso[1], iso[2], iso[3]);
  if (type === 'number' || /^\d{4,6}$/.test(text))
    return refused(`is a bare number: format the column as a date, ${WRITE}`);
  const named = /^(\d{1,2})[-. ]{1,2}([\p{L}]{3,9})\.?[-. ,]{1,2}(\d{4}|\d{2})$/u.exec(text);
  if (named) return byName(named[1], named[2], named[3]);
  const american = /^([\p{L}]{3,9})\.? (\d{1,2}),? (\d{4})$/u.exec(text);
  if (american) return byName(american[2], american[1], american[3]);
  const parts = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/.exec(text);
  if (!parts) return refused(`is not a day: ${WRITE}`);
  const [, first, sign, second, year] = parts;
  const dayFirst = dayOf(year, second, first);
  if (sign === '.') return dayFirst;
  const monthFirst = dayOf(year, first, second);
  if (!dayFirst.ok) return monthFirst.ok ? monthFirst : dayFirst;
  if (!monthFirst.ok || monthFirst.value === dayFirst.value) return dayFirst;
  return refused(`could be ${dayFirst.value} or ${monthFirst.value}: ${WRITE}`);
}

const WRITE = 'write it as 2026-11-25';

function byName(day: string | undefined, month: string | undefined, year: string | undefined): CellReading<string> {
  const key = (month ?? '').normalize('NFKD').replaceAll(/\P{L}/gu, '').toLowerCase();
  const at = MONTHS.findIndex((names) => names.some((name) => key.startsWith(name)));
  return at < 0 ? refused(`names no month known here: ${WRITE}`) : dayOf(year, String(at + 1), day);
}

/** English, German, French and Spanish months by their first letters, from memory. */
const MONTHS = [
  ['jan', 'ene'],
  ['feb', 'fev'],
  ['mar', 'mrz'],
  ['apr', 'avr', 'abr'],
  ['may', 'mai'],
  ['jun', 'juin'],
  ['jul', 'juil'],
  ['aug', 'aou', 'ago'],
  ['sep'],
  ['oct', 'okt'],
  ['nov'],
  ['dec', 'dez', 'dic'],
];

/** Two figures for a year mean this century: nothing in a store was shelved in the last one without four. */
function dayOf(year?: string, month?: string, day?: string): CellReading<string> {
  const y = year?.length === 2 ? 2000 + Number(year) : Number(year);
  const iso = `${String(y).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const date = new Date(`${iso}T00:00:00Z`);
  if (Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== iso)
    return refused(`is not a day of the calendar: ${WRITE}`);
  return told(iso, year?.length === 2 ? [`the year ${year} is read as ${y}`] : []);
}
