import { expect, test } from 'vitest';
import { type LawCase, leastClasses } from '@/lib/standards/efficiency-law';

const motor: LawCase = { kw: 7.5, poles: 4, hasBrake: false, isForArea: false, asOf: '2026-11-29' };
const levelIn = (region: string, differs: Partial<LawCase>) =>
  leastClasses({ ...motor, ...differs }).now.find((one) => one.region === region)?.level ?? null;

// UK S.I. 2021/745, Schedule 16, the UK text of Regulation (EU) 2019/1781, Annex I: read in two texts.
test.each<[string, Partial<LawCase>, string | null]>([
  ['0.12 to below 0.75 kW: IE2 from 1 July 2021', { kw: 0.55 }, 'IE2'],
  ['0.75 to 1000 kW: IE3 from 1 July 2021', {}, 'IE3'],
  ['1000 kW too', { kw: 1000 }, 'IE3'],
  ['75 to 200 kW, 2 to 6 poles: IE4 from 1 July 2023', { kw: 75 }, 'IE4'],
  ['but not 8 poles', { kw: 75, poles: 8 }, 'IE3'],
  ['nor with a brake', { kw: 110, hasBrake: true }, 'IE3'],
  ['nor marked for an area', { kw: 110, isForArea: true }, 'IE3'],
  ['nor before that day', { kw: 110, asOf: '2023-06-30' }, 'IE3'],
  ['nothing before 1 July 2021', { asOf: '2021-06-30' }, null],
  ['nothing for 10 poles', { poles: 10 }, null],
  ['nothing below 0.12 kW', { kw: 0.09 }, null],
])('European Union: %s', (_, differs, level) => {
  expect(levelIn('European Union', differs)).toBe(level);
  expect(levelIn('Great Britain', differs)).toBe(level);
});

// 10 CFR 431.25, Table 5: design A and B, 1 to 500 hp, from 1 June 2016 (one text).
test.each<[string, Partial<LawCase>, string | null]>([
  ['1 hp', { kw: 0.7457 }, 'premium'],
  ['500 hp', { kw: 372.85 }, 'premium'],
  ['above 500 hp the table ends', { kw: 447 }, null],
  // The same table as NEMA MG 1 Table 12-12, by a building-energy data set (one text): no figure for 6 poles from 400 hp,
  // nor for 8 from 300.
  ['350 hp, 6 poles', { kw: 261, poles: 6 }, 'premium'],
  ['400 hp, 6 poles: nothing is printed', { kw: 298, poles: 6 }, null],
  ['250 hp, 8 poles', { kw: 186.4, poles: 8 }, 'premium'],
  ['300 hp, 8 poles: nothing is printed', { kw: 224, poles: 8 }, null],
])('United States: %s', (_, differs, level) => {
  expect(levelIn('United States', differs)).toBe(level);
});

test('what is from memory says so, and what is to come is told apart', () => {
  const { now, next } = leastClasses({ ...motor, kw: 90 });
  expect(now.find(({ region }) => region === 'China')?.cite).toMatch(/\(from memory\)$/);
  expect(now.find(({ region }) => region === 'European Union')?.cite).toMatch(/\(read in two texts\)$/);
  expect(next).toEqual([expect.objectContaining({ region: 'United States', level: 'IE4', from: '2027-06-01' })]);
});
