import { kwOfHp } from '@/lib/units/power';
import { returnTimes } from './tables/return-times';

export interface ReturnTime {
  /** Days of the calendar. */
  lowDays: number;
  highDays: number;
  cite: string;
}

type TimeId = (typeof returnTimes.rows)[number]['id'];

/** Five working days are a week. */
const DAYS = { days: 1, weeks: 7, 'working days': 7 / 5 } as const;

/** How long a motor is waited for, by what it is waited for and its power; `kw` null: unknown, the longest of all sizes. */
export function returnTime(id: TimeId, kw: number | null): ReturnTime {
  const rows = returnTimes.rows.filter((row) => row.id === id);
  const fits = rows.filter(({ upToHp }) => upToHp === null || kw === null || kw <= kwOfHp(upToHp) * EXACTLY);
  const asked = kw === null ? fits : fits.slice(0, 1);
  return {
    lowDays: Math.min(...asked.map(({ low, unit }) => low * DAYS[unit])),
    highDays: Math.max(...asked.map(({ high, unit }) => high * DAYS[unit])),
    cite:
      id === 'rewind'
        ? 'turnaround of a rewind, a supplier’s article (read in one text)'
        : 'time of delivery: common practice, no source',
  };
}

/** 10 hp stamped as 7.5 kW is a little more. */
const EXACTLY = 1.02;
