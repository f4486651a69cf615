import { expect, test } from 'vitest';
import { deviceWords } from '@/app/device-words';

test.each([
  ['Mozilla/5.0 (Some System 14; Mobile) Engine/1.0 Browser/1.0 Mobile', 'Phone'],
  ['Mozilla/5.0 (Some System 14; Tablet; rv:1.0) Engine/1.0 Browser/1.0', 'Tablet'],
  ['Mozilla/5.0 (Desk System; x64) Engine/1.0 Browser/1.0', 'Computer'],
  ['historian/2.1', 'Program'],
  ['', 'Unknown device'],
  [null, 'Unknown device'],
])('a session of %s is on a %s', (userAgent, words) => {
  expect(deviceWords(userAgent)).toBe(words);
});
