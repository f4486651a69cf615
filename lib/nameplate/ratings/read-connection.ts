import { notUnderstood, type ReadingOfText, readEach, understood } from '@/lib/units/reading-of-text';

export type Connection = 'star' | 'delta' | 'series-star' | 'parallel-star' | 'series-delta' | 'parallel-delta';

/** "Δ/Y", "YY/Y", "2Y/1Y", "STAR", "DELTA/WYE": every connection stamped, in the order written. */
export function readConnection(text: string): ReadingOfText<Connection[]> {
  const read = readEach(text.split('/'), one);
  if (!read.ok) return read;
  // Y beside YY is the same coils in series.
  const value = read.value.map((connection): Connection => {
    if (connection === 'star' && read.value.includes('parallel-star')) return 'series-star';
    return connection === 'delta' && read.value.includes('parallel-delta') ? 'series-delta' : connection;
  });
  return understood(value);
}

function one(text: string): ReadingOfText<Connection> {
  const known = WORDS.get(text.trim().toUpperCase().replaceAll(/\s/g, ''));
  return known ? understood(known) : notUnderstood(text, 'is not a connection: star (Y) or delta (Δ)');
}

const WORDS = new Map<string, Connection>([
  ...['Y', '1Y', 'STAR', 'WYE'].map((word): [string, Connection] => [word, 'star']),
  ...['Δ', 'D', '1Δ', '1D', 'DELTA'].map((word): [string, Connection] => [word, 'delta']),
  ...['YY', '2Y'].map((word): [string, Connection] => [word, 'parallel-star']),
  ...['ΔΔ', 'DD', '2Δ', '2D'].map((word): [string, Connection] => [word, 'parallel-delta']),
]);
