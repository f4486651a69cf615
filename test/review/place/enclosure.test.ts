import { expect, test } from 'vitest';
import { enclosure } from '@/lib/review/place/enclosure';
import { inPlace } from '../in-place';

const at = (surroundings: object, ofMotor: object = {}) => enclosure(inPlace({ surroundings }, ofMotor));

// Each numeral for itself, IEC 60529 clause 6: 6 keeps dust out, 5 only what harms; 5 is a jet, 4 a splash.
test.each([
  ['as tight as the place asks', { ip: 'IP55' }, {}, null],
  ['dust below need', { ip: 'IP65' }, {}, 'plan'],
  ['water below need', { ip: 'IP56' }, {}, 'plan'],
  ['immersion is not a jet', { ip: 'IP55' }, { ip: 'IP57' }, 'plan'],
  ['no code on the plate, and its word promises less', { ip: 'IP66' }, { ip: null }, 'look'],
  // Common practice, no source; jets begin with IPX5.
  ['hosed, and not made for it', { washdown: true }, {}, 'plan'],
  ['hosed, and made for it', { washdown: true }, { washdown: 'painted' }, null],
  ['hosed, and nobody read whether it is made for it', { washdown: true }, { washdown: null }, 'look'],
] as const)('%s', (_, place, ofMotor, urgency) => {
  expect(at(place, ofMotor)?.urgency ?? null).toBe(urgency);
});

test('both wants are told', () => {
  const found = at({ ip: 'IP65', washdown: true }, { ip: 'IP44' });
  expect(found).toMatchObject({ have: 'IP44', need: 'IP65', difference: null });
  expect(found?.says).toMatch(/IP44 gives less against solids and water.*No washdown duty/);
});

test('is not asked where the place states no need', () => {
  expect(at({ ip: null, washdown: null })).toBeNull();
});
