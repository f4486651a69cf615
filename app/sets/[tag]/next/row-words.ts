import type { Moment, NextFailureRow } from '@/lib/energy/next-failure/next-failure';

export const MOMENT_WORDS: Record<Moment, string> = {
  tonight: 'Tonight, from the shelf',
  'next-failure': 'At the next failure, bought',
  'after-repair': 'After a repair',
};

export const motorText = ({ motor, ieClass }: NextFailureRow): string =>
  ieClass === null ? motor.id : `${motor.id}, ${ieClass}`;
