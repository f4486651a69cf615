import { expect, test } from 'vitest';
import { predictedOf } from '@/lib/job/predicted';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { motor, set } from '../matching/easy';
import { by } from './easy-job';

test('the predicted current is that of the judgement’s operating point', () => {
  const [here, candidate] = [set(), motor()];
  const { operatingPoint } = judgeAlone({ from: 'buy', motor: candidate }, here, by.settings, by.asOf);
  expect(predictedOf(here, candidate, by).amps).toBeCloseTo(operatingPoint.amps ?? Number.NaN, 2);
});

test('with a sheave to change it is the current once the speed is put right', () => {
  const here = set({
    coupling: { type: 'belt', ratio: 5, sheave: { pitchDiameterMm: 150, changeable: true } },
    load: { atPumpRpm: 350, shaftKw: 2.8 },
    supply: { hertz: 60 },
  });
  const faster = motor({ poles: 2, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 3500, amps: 6.2, pf: 0.87 }] });
  const { amps, motorRpm } = predictedOf(here, faster, by);
  // 2.8 kW at the pump over 95 % of a belt is 2.95 kW of 3.73 kW, whatever the sheave: 79 % of the load.
  expect(amps).toBeGreaterThan(0.7 * 6.2);
  expect(amps).toBeLessThan(0.9 * 6.2);
  expect(motorRpm).toBeGreaterThan(3500);
});

test.each([
  ['the pump’s power', set({ load: { shaftKw: null } }), motor(), /Shaft power is not told/],
  ['the plate’s amps', set(), motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }] }), /plate’s amps/],
  [
    'a power factor under half load',
    set({ load: { shaftKw: 1.2 } }),
    motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] }),
    /no power factor/,
  ],
])('without %s it says why none is predicted', (_what, here, candidate, why) => {
  const { amps, whyNoAmps } = predictedOf(here, candidate, by);
  expect(amps).toBeNull();
  expect(whyNoAmps).toMatch(why);
});
