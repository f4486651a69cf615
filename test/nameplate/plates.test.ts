import { describe, expect, test } from 'vitest';
import { readPlate } from '@/lib/nameplate/read-plate';
import { iecPlates } from './plates-iec';
import { nemaPlates } from './plates-nema';
import type { StampedPlate } from './stamped-plate';

const plates = [...nemaPlates, ...iecPlates];

/** Everything read of `text`, in the shape of a stamped plate. */
function readingOf(text: string): Omit<StampedPlate, 'name' | 'text'> {
  const { motor, unread, problems } = readPlate(text);
  const { ratings, ...rest } = motor;
  return {
    motor: rest,
    ...(ratings ? { ratings } : {}),
    unread,
    problems: problems.map(({ path }) => path).sort(),
  };
}

describe('whole plates, word for word', () => {
  test.each(plates)('$name', ({ name: _, text, ...said }) => {
    expect(readingOf(text)).toEqual({ unread: [], problems: [], ...said });
  });

  test('thirty and more are read', () => {
    expect(plates.length).toBeGreaterThanOrEqual(30);
  });
});
