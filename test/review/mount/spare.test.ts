import { expect, test } from 'vitest';
import { spare } from '@/lib/review/mount/spare';
import { inPlace } from '../in-place';

const of = (ofMotor: Parameters<typeof inPlace>[1], spares: number | null) =>
  spare(inPlace({}, ofMotor, { amps: [null, null, null], spares }));

test.each([
  // The T series took the place of U and of the frames before it: common practice, no source (from memory).
  ['254U', 'T frames'],
  ['184', 'T frames'], // no letter: of the series of 1952
  // Suffix letters: NEMA MG 1 4.2.2.
  ['184TZ', 'shaft'],
  ['184TY', 'feet'],
])('%s with nothing on the shelves for it', (frame, word) => {
  expect(of({ frame }, 0)).toMatchObject({ urgency: 'plan', have: 0, need: 1, says: expect.stringContaining(word) });
  expect(of({ frame }, 1)).toBeNull();
});

test('where nobody counted it is not asked', () => {
  expect(of({ frame: '254U' }, null)).toBeNull();
});

test.each(['184T', '184TC', '184TS', '112M', '56C', null, 'no frame'])(
  '%s is made today, or tells nothing',
  (frame) => {
    expect(of({ frame }, 0)).toBeNull();
  },
);

test('a shaft measured as another than the standard’s', () => {
  // 184T: 1 1/8 in = 28.575 mm (NEMA MG 1 4.4.1).
  expect(of({ frame: '184T', measured: { shaftDiameterMm: 25.4 } }, 0)?.says).toContain('28.58 mm');
  expect(of({ frame: '184T', measured: { shaftDiameterMm: 28.6 } }, 0)).toBeNull();
});
