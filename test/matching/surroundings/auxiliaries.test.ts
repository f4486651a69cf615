import { expect, test } from 'vitest';
import { auxiliaries } from '@/lib/matching/criteria/surroundings/auxiliaries';
import { AUXILIARIES, type Auxiliary } from '@/lib/plant/motor-words';
import { motor, set } from '../easy';
import { asked } from './asked';

type Brake = { torqueNm?: number | null; volts?: number | null } | undefined;
const using = (
  needs: readonly Auxiliary[],
  had: readonly Auxiliary[] | null = [],
  brake?: Brake,
  supply: object = {},
) => ({
  ...set({ needs: [...needs], supply }),
  failed: motor({ has: had && [...had], brake }),
});
const bringing = (has: readonly Auxiliary[] | null, brake?: Brake, differs: object = {}) =>
  motor({ has: has && [...has], brake, ...differs });

// Common practice, no source: what cannot be added at the pump is for a person, what can is work.
test.each([
  ['thermistor', 'check'],
  ['thermostat', 'check'],
  ['rtd', 'check'],
  ['encoder', 'check'],
  ['insulated-bearing', 'check'],
  ['heater', 'work'],
  ['shaft-ground', 'work'],
  ['brake', 'block'],
] as const)('a motor without the %s the set uses: %s', (one, grade) => {
  const found = asked(auxiliaries, using([one]), bringing([]));
  expect(found).toMatchObject({ grade, have: 'none', by: grade === 'check' ? 'person' : null });
  expect(found?.work?.id ?? null).toBe(grade === 'work' ? 'auxiliary-wiring' : null);
});

test.each(AUXILIARIES.filter((one) => one !== 'brake'))('a motor with the %s the set uses is ok', (one) => {
  expect(asked(auxiliaries, using([one]), bringing([one]))?.grade).toBe('ok');
});

test.each(AUXILIARIES)(
  'a %s the failed motor had and this one lacks is a check, though the set states no need',
  (one) => {
    expect(asked(auxiliaries, using([], [one]), bringing([]))).toMatchObject({
      grade: 'check',
      by: 'person',
      need: expect.anything(),
    });
  },
);

test.each(['thermistor', 'thermostat', 'rtd'] as const)('a missing %s is never answered by bridging a relay', (one) => {
  expect(asked(auxiliaries, using([one]), bringing([]))?.says).toContain('Do not bridge the relay');
});

test('what it brings is unknown: a reading', () => {
  for (const one of AUXILIARIES)
    expect(asked(auxiliaries, using([one]), bringing(null))).toMatchObject({
      grade: 'check',
      by: 'reading',
      have: null,
    });
  expect(asked(auxiliaries, using([], ['heater']), bringing(null))).toMatchObject({ grade: 'check', by: 'reading' });
});

test('a missing encoder is a check that still lists the heater’s work', () => {
  expect(asked(auxiliaries, using(['encoder', 'heater']), bringing([]))).toMatchObject({
    grade: 'check',
    work: { id: 'auxiliary-wiring' },
  });
});

const full = { torqueNm: 20, volts: 230 };
test.each([
  ['the same', full, full, 'ok', null],
  ['more torque', full, { ...full, torqueNm: 32 }, 'ok', null],
  ['less torque', full, { ...full, torqueNm: 16 }, 'check', 'person'],
  ['another coil voltage', full, { ...full, volts: 400 }, 'work', null],
  ['less torque and another coil voltage', full, { torqueNm: 16, volts: 400 }, 'check', 'person'],
  ['its torque unknown', full, { volts: 230 }, 'check', 'reading'],
  ['its coil volts unknown', full, { torqueNm: 20 }, 'check', 'reading'],
  ['the failed one’s torque unknown', { volts: 230 }, full, 'check', 'reading'],
  ['the failed one’s coil volts unknown', { torqueNm: 20 }, full, 'check', 'reading'],
] as const)('a brake, %s', (_, had, has, grade, by) => {
  expect(asked(auxiliaries, using(['brake'], ['brake'], had), bringing(['brake'], has))).toMatchObject({ grade, by });
});

test('a brake with no plate of the failed one to hold it against asks for both plates', () => {
  const blank = { ...using(['brake']), failed: null };
  expect(asked(auxiliaries, blank, bringing(['brake'], full))).toMatchObject({ grade: 'check', by: 'reading' });
});

test('torques compared carry their difference', () => {
  const found = asked(auxiliaries, using(['brake'], ['brake'], full), bringing(['brake'], { ...full, torqueNm: 16 }));
  expect(found).toMatchObject({ have: 16, need: 20, unit: 'N·m', difference: -4 });
});

test('a brake nobody uses must be fed or taken off; on a drive fed ahead of it', () => {
  expect(asked(auxiliaries, using([]), bringing(['brake'], full))).toMatchObject({ grade: 'work' });
  const supply = { start: 'drive', drive: { outputVolts: 460, baseHertz: 60 } };
  expect(asked(auxiliaries, using([], [], undefined, supply), bringing(['brake'], full))?.work?.what).toContain(
    'ahead of the drive',
  );
});

test('a protector that resets itself in the line is a check', () => {
  const single = { kind: 'single-phase', phases: 1 } as const;
  expect(asked(auxiliaries, using([]), bringing(['thermostat'], undefined, single))).toMatchObject({
    grade: 'check',
    by: 'person',
  });
  expect(asked(auxiliaries, using(['thermostat']), bringing(['thermostat'], undefined, single))?.grade).toBe('check');
  expect(asked(auxiliaries, using(['thermostat']), bringing(['thermostat']))?.grade).toBe('ok');
});

test('is not asked where nothing is used, had or must be fed', () => {
  expect(asked(auxiliaries, using([]), bringing([]))).toBeNull();
  expect(asked(auxiliaries, using([], null), bringing(null))).toBeNull();
  expect(asked(auxiliaries, using([]), bringing(['thermistor', 'heater']))).toBeNull();
  expect(asked(auxiliaries, { ...using([]), failed: null }, bringing(null))).toBeNull();
});
