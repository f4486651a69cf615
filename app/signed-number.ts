import { readNumber } from '@/lib/units/read-number';

/** A figure that may be below zero, as people write it: "-0.5", "−0,5", "+0.3". Within the bounds, both included. */
export function signedNumber(typed: string, { min, max }: { min: number; max: number }): ReturnType<typeof readNumber> {
  const [, sign, rest = ''] = /^\s*([-−+]?)\s*(.*)$/s.exec(typed) ?? [];
  if (sign !== '-' && sign !== '−') return readNumber(rest, { min: Math.max(min, 0), max });
  if (min >= 0) return readNumber(typed, { min, max });
  const read = readNumber(rest, { min: 0, max: -min });
  return read.ok ? { ...read, value: 0 - read.value } : read;
}
