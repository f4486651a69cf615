import { expect, test } from 'vitest';
import { washdown } from '@/lib/matching/criteria/surroundings/washdown';
import { motor, set } from '../easy';
import { asked } from './asked';

const place = (stated: boolean | null, had: string | null = 'none', differs: object = {}) => ({
  ...set({ surroundings: { washdown: stated }, ...differs }),
  failed: had === null ? null : motor({ washdown: had as 'none' }),
});
const candidate = (duty: 'none' | 'painted' | 'stainless' | null, ip: string | null = 'IP66') =>
  motor({ washdown: duty, ip });

// Only a declared duty answers, an IP code alone does not: common practice, no source. IPX5 is the first jet: IEC 60529.
test.each([
  ['declared, painted', 'painted', 'IP66', 'ok', null],
  ['declared, stainless', 'stainless', 'IP69', 'ok', null],
  ['declared, whatever its IP code', 'painted', null, 'ok', null],
  ['IP69 alone', 'none', 'IP69', 'check', 'person'],
  ['IP66 alone', 'none', 'IP66', 'check', 'person'],
  ['IP55 alone', 'none', 'IP55', 'check', 'person'],
  ['no proof against jets', 'none', 'IP54', 'block', null],
  ['no IP code either', 'none', null, 'check', 'person'],
  ['water not stated', 'none', 'IP5X', 'check', 'person'],
  ['unknown', null, 'IP69', 'check', 'reading'],
] as const)('a place washed down: %s', (_, duty, ip, grade, by) => {
  expect(asked(washdown, place(true), candidate(duty, ip))).toMatchObject({ grade, by });
});

test.each([
  ['painted for painted', 'painted', 'painted', 'ok'],
  ['stainless for painted', 'painted', 'stainless', 'ok'],
  ['painted for stainless', 'stainless', 'painted', 'check'],
  ['none for painted', 'painted', 'none', 'check'],
  ['unknown for painted', 'painted', null, 'check'],
] as const)('where nobody has said the failed motor is evidence: %s', (_, had, duty, grade) => {
  expect(asked(washdown, place(null, had), candidate(duty, 'IP44'))?.grade).toBe(grade);
});

test.each(['down', 'up'] as const)('with the shaft %s the drains are told', (shaftDirection) => {
  const found = asked(washdown, place(true, 'none', { shaftDirection }), candidate('stainless'));
  expect(found).toMatchObject({ grade: 'note', says: expect.stringContaining('lowest in this position') });
});

test('is not asked of a dry place, nor where neither the set nor the failed motor tells of it', () => {
  expect(asked(washdown, place(false, 'stainless'), candidate('none'))).toBeNull();
  expect(asked(washdown, place(null, 'none'), candidate('none'))).toBeNull();
  expect(asked(washdown, place(null, null), candidate(null))).toBeNull();
});
