import { expect, test } from 'vitest';
import { duty } from '@/lib/matching/criteria/load/duty';
import { motor, set } from '../easy';
import { asked } from './asked';

test.each([
  ['continuous', 'S1', {}, 'ok'],
  ['short-time', 'S2', {}, 'check'],
  ['intermittent', 'S3', {}, 'check'],
  ['intermittent, as the failed motor was', 'S3', { failed: { id: 'M-0', duty: 'S3' } }, 'note'],
  ['not shown, which a plate must only where it is not S1: not asked', null, {}, null],
] as const)('duty: %s', (_, plated, differs, grade) => {
  expect(asked(duty, set(differs), motor({ duty: plated }))?.grade ?? null).toBe(grade);
});
