import { expect, test } from 'vitest';
import { jobOf } from '@/lib/job/job';
import type { Quantity } from '@/lib/job/quantities/quantity';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import type { MotorInput } from '@/lib/plant/motor';
import { motor, set } from '../matching/easy';
import { by } from './easy-job';

function quantityOf(id: Quantity['id'], differs: Parameters<typeof set>[0] = {}, plate: Partial<MotorInput> = {}) {
  const [here, candidate] = [set(differs), motor(plate)];
  const { findings } = judgeAlone({ from: 'buy', motor: candidate }, here, by.settings, by.asOf);
  return jobOf(here, candidate, findings, by).quantities.find((one) => one.id === id) ?? null;
}

const IEC: Partial<MotorInput> = { frame: '112M', mounting: 'IM B3' };

test('a 112M under a 184T shaft is shimmed by what it is lower, on what lies there', () => {
  // NEMA MG 1 4.4.1: D of 184T is 4.50 in = 114.3 mm; IEC 60072-1: H of 112M is 112 mm.
  expect(quantityOf('shims', {}, IEC)).toMatchObject({ value: '3.8 mm', detail: '1.5 mm there, 2.3 mm more' });
  expect(quantityOf('shims')).toMatchObject({ value: '1.5 mm', detail: 'as they lie there' });
});

test('shims that nobody measured are asked for', () => {
  expect(quantityOf('shims', { base: { shimsPresentMm: null } }, IEC)).toMatchObject({
    value: null,
    detail: expect.stringMatching(/^2\.3 mm more than lie there: measure/),
  });
});

test('a motor held by its face alone has no shims', () => {
  expect(quantityOf('shims', { mounting: 'face', coupling: { type: 'gear', efficiencyPct: 95 } })).toBeNull();
});

test('a 28 mm shaft in a 1-1/8 in hub asks for the bore, and the key comes with it', () => {
  // IEC 60072-1 and EN 50347: 112M has 28 mm and a key of 8 mm; NEMA MG 1 4.4.1: 184T has 1.125 in = 28.575 mm.
  const bushed = { coupling: { hub: { bushed: true, lengthMm: 60 } } };
  expect(quantityOf('bore', bushed, IEC)).toMatchObject({
    name: 'Hub bushing, bored',
    value: '28 mm',
    detail: expect.stringMatching(/^in place of 28\.575 mm/),
  });
  expect(quantityOf('key', bushed, IEC)).toMatchObject({ value: '8 mm', detail: 'new, with the new bore' });
  expect(quantityOf('bore')).toMatchObject({ value: '28.575 mm', detail: 'as it is' });
});

test('a shaft that nobody knows is measured', () => {
  expect(quantityOf('bore', {}, { frame: null })).toMatchObject({
    value: null,
    detail: expect.stringMatching(/Measure this motor’s shaft/),
  });
});

test.each([
  ['in the line', {}, '6.6 A', /in the line, by the plate; inside its dial, 5 to 9 A/],
  // NEC 430.6(A) by the plate; 1/√3 of it in a leg of the delta.
  [
    'in a leg of the delta',
    { start: 'star-delta' as const, overloadIn: 'phase' as const, overloadMinA: 3, overloadMaxA: 6 },
    '3.83 A',
    /in the delta.*inside its dial, 3 to 6 A/,
  ],
  ['beyond its dial', { overloadMaxA: 6 }, '6.6 A', /outside its dial, 5 to 6 A/],
  ['with one end of the dial unknown', { overloadMaxA: null }, '6.6 A', /read both ends/],
  ['where nobody knows it stands', { start: 'star-delta' as const, overloadIn: null }, null, /look in the starter/],
])('the overload %s', (_where, supply, value, detail) => {
  const delta = { leads: 6, winding: 'star-delta-6' } as const;
  const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, connection: 'delta' }] as const;
  expect(quantityOf('overload', { supply }, { ...delta, ratings: [...ratings] })).toMatchObject({
    value,
    detail: expect.stringMatching(detail),
  });
});

test('an overload without plate amps asks for the plate', () => {
  expect(quantityOf('overload', {}, { ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }] })).toMatchObject({
    value: null,
    detail: 'Read the amps at this voltage on the plate',
  });
});

test('a drive is told the plate, its limits and a frequency where the speed asks for one', () => {
  const supply = { start: 'drive' as const, drive: { ratedA: 20, minHertz: 20, maxHertz: 60, overloadPct: 150 } };
  expect(quantityOf('drive-plate', { supply })).toMatchObject({
    value: '460 V, 60 Hz, 6.6 A, 1750 rpm, 3.73 kW',
    detail: null,
  });
  expect(quantityOf('drive-limits', { supply })).toMatchObject({ value: '20 to 60 Hz', detail: null });
  expect(quantityOf('drive-duty', { supply })).toBeNull();
  // Six poles make two thirds of the speed at one frequency: to make 1200 rpm a four-pole ran at about 40 Hz.
  const six = { poles: 6, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1160, amps: 7.6, pf: 0.75 }] };
  const slow = { supply, load: { atPumpRpm: 1150, shaftKw: 2 } };
  expect(quantityOf('drive-duty', slow, six)).toMatchObject({
    value: expect.stringMatching(/^5\d(\.\d)? Hz$/),
    detail: expect.stringMatching(/^in place of (39|40)/),
  });
  expect(quantityOf('drive-limits', { supply: { ...supply, drive: { ratedA: 20 } } })).toMatchObject({ value: null });
  expect(quantityOf('drive-plate')).toBeNull();
});

test('a belt-driven pump with another speed gets a sheave', () => {
  const belt = { coupling: { type: 'belt' as const, ratio: 5, sheave: { pitchDiameterMm: 150, changeable: true } } };
  const two = { poles: 2, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 3500, amps: 6.2 }] };
  expect(quantityOf('sheave', { ...belt, load: { atPumpRpm: 350, shaftKw: 2.8 } }, two)?.detail).toMatch(
    /sheave of 7\d(\.\d)? mm pitch diameter in place of 150 mm/,
  );
});
