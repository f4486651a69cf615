import { describe, expect, test } from 'vitest';
import { power } from '@/lib/matching/criteria/load/power';
import { motor, set } from '../easy';
import { asked } from './asked';

const plate = (power: { hp?: number; kw?: number }, rpm = 1750, more: object = {}) => [
  { volts: 460, hertz: 60, rpm, amps: 6.6, ...power, ...more },
];
const FIVE_HP = 3.72849935791; // 5 × 550 ft·lbf/s in kW
const gear = { type: 'gear', ratio: 1 } as const;
const drive = { outputVolts: 460, baseHertz: 60, ratedA: 14 };

/** The load that asks `share` of the easy motor's rating at its own speed there: n = 1800 − 50·share, constant torque. */
const loaded = (share: number) => ({
  shaftKw: FIVE_HP * share,
  atPumpRpm: 1800 - 50 * (share / ((1800 - 50 * share) / 1750)),
});

describe('shaft power told', () => {
  test.each([
    ['under the rating', { load: { shaftKw: 3.1 } }, {}, 'ok'],
    ['exactly the rating', { load: { shaftKw: FIVE_HP, atPumpRpm: 1750 } }, {}, 'ok'],
    ['1 % over', { load: loaded(1.01) }, { serviceFactor: null }, 'check'],
    ['3 % over, no service factor printed', { load: loaded(1.03) }, { serviceFactor: null }, 'block'],
    ['3 % over, inside the service factor', { load: loaded(1.03) }, {}, 'check'],
    ['16 % over, outside it', { load: loaded(1.17) }, {}, 'block'],
    ['inside it, at altitude', { load: loaded(1.03), surroundings: { altitudeM: 1100 } }, {}, 'block'],
    ['inside it, on a drive', { load: loaded(1.05), supply: { start: 'drive', volts: 460, drive } }, {}, 'block'],
    [
      'inside it, re-rated to 50 Hz',
      { supply: { volts: 380, hertz: 50 }, load: { shaftKw: 3.1, atPumpRpm: 1450 } },
      {},
      'block',
    ],
    [
      'derated by heat: 0.82 at 60 °C',
      { surroundings: { ambientC: 60 }, load: { shaftKw: 3.1 } },
      { serviceFactor: null },
      'check',
    ],
    ['derated by heat, less asked', { surroundings: { ambientC: 60 }, load: { shaftKw: 2.9 } }, {}, 'ok'],
    ['derating unknown', { surroundings: { ambientC: 70 } }, {}, 'check'],
    ['derating unknown and overloaded', { surroundings: { ambientC: 70 }, load: { shaftKw: 4.2 } }, {}, 'block'],
    ['rated power unknown', {}, { ratings: plate({}) }, 'check'],
    ['supply frequency unknown', { supply: { hertz: null } }, {}, 'check'],
    [
      'belt: 3.6/0.95 = 3.79 kW',
      { coupling: { type: 'belt', ratio: 1 }, load: { shaftKw: 3.6 } },
      { serviceFactor: null },
      'check',
    ],
    ['gear of 80 %: 3.1/0.8 = 3.88 kW', { coupling: { ...gear, efficiencyPct: 80 } }, { serviceFactor: null }, 'block'],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(power, set(differs), motor(plated))?.grade).toBe(grade);
  });

  test('the load is the one at the speed the motor runs at', () => {
    expect(asked(power, set(), motor())?.need).toBeCloseTo(3.1149, 4);
  });

  test('a power beyond every table is for a person, an unread plate for a reading', () => {
    const far = asked(power, set({ supply: { volts: 460, hertz: 400 } }), motor());
    expect(far).toMatchObject({ grade: 'check', by: 'person' });
    expect(asked(power, set(), motor({ ratings: plate({}) }))?.by).toBe('reading');
  });

  test('hp and kW plates of one power are judged alike', () => {
    const kw = asked(power, set(), motor({ ratings: plate({ kw: FIVE_HP }) }));
    expect(kw?.difference).toBeCloseTo(asked(power, set(), motor({ ratings: plate({ hp: 5 }) }))?.difference ?? 0, 6);
  });
});

describe('a gear without an efficiency is judged like for like', () => {
  test.each([
    ['no smaller than the failed motor', {}, {}, 'ok'],
    ['smaller', {}, { ratings: plate({ kw: 3.3 }) }, 'check'],
    ['above rating even without losses', { load: { shaftKw: 3.8 } }, {}, 'block'],
    ['no failed plate', { failed: null }, {}, 'check'],
    ['what drives the pump unknown', { coupling: { type: null, ratio: 1 } }, { ratings: plate({ kw: 3.3 }) }, 'check'],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(power, set({ coupling: gear, ...differs }), motor(plated))?.grade).toBe(grade);
  });
});

describe('shaft power unknown: the failed motor’s output', () => {
  const unknown = { load: { shaftKw: null } };
  test.each([
    ['the same', {}, {}, 'ok'],
    ['more', {}, { ratings: plate({ hp: 7.5 }) }, 'ok'],
    ['less', {}, { ratings: plate({ hp: 3 }) }, 'check'],
    ['3.7 kW for 5 hp: 10 CFR 431.25', {}, { ratings: plate({ kw: 3.7 }) }, 'ok'],
    ['4 kW for 5 hp', {}, { ratings: plate({ kw: 4 }) }, 'ok'],
    ['less by derating', { surroundings: { ambientC: 50 } }, { ambientC: 40 }, 'check'],
    ['no failed plate', { failed: null }, {}, 'check'],
    [
      'two poles on a drive, slowed to half',
      { supply: { start: 'drive', volts: 460, drive } },
      { poles: 2, ratings: plate({ hp: 5 }, 3500) },
      'check',
    ],
    [
      'two poles of twice the power on a drive',
      { supply: { start: 'drive', volts: 460, drive } },
      { poles: 2, ratings: plate({ hp: 10 }, 3500) },
      'ok',
    ],
  ] as const)('%s', (name, differs, plated, grade) => {
    const failed =
      name === 'less by derating' ? { failed: { id: 'M-0', poles: 4, ambientC: 50, ratings: plate({ hp: 5 }) } } : {};
    expect(asked(power, set({ ...unknown, ...failed, ...differs }), motor(plated))?.grade).toBe(grade);
  });

  test.each([
    [1.5, 1.1],
    [3, 2.2],
    [7.5, 5.5],
    [15, 11],
    [25, 18.5],
    [30, 22],
    [75, 55],
    [125, 90],
    [150, 110],
  ])('%f hp and %f kW count as equal both ways: 10 CFR 431.25 (read in two texts)', (hp, kw) => {
    const of = (ratings: ReturnType<typeof plate>) => ({ id: 'M-0', poles: 4, ratings });
    const inKw = plate({ kw });
    const inHp = plate({ hp });
    expect(asked(power, set({ ...unknown, failed: of(inHp) }), motor({ ratings: inKw }))?.grade).toBe('ok');
    expect(asked(power, set({ ...unknown, failed: of(inKw) }), motor({ ratings: inHp }))?.grade).toBe('ok');
  });

  test('the reading that would tell it is named', () => {
    expect(asked(power, set({ ...unknown, failed: null }), motor())?.reading).toContain('pump curve');
  });
});
